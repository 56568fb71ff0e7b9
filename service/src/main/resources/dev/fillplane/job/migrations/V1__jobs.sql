-- Common to H2 and PostgreSQL; ${bytes} is the type of binary data. Times of jobs are milliseconds since 1970.

create table job (
  id varchar(40) primary key,
  caller varchar(100) not null,
  confidence double precision not null,
  units_per_day integer,
  every_days integer not null,
  bags_per_pallet integer,
  webhook varchar(2000),
  units integer not null,
  created_at bigint not null,
  ended_at bigint,
  cancelled boolean not null,
  expires_at bigint not null
);
create index job_expires_at on job (expires_at);

-- state: 0 waiting, 1 planned, 2 failed. The request is dropped once the unit is done.
create table unit (
  job varchar(40) not null references job (id) on delete cascade,
  unit integer not null,
  reference varchar(160) not null,
  state smallint not null,
  request ${bytes},
  answer ${bytes},
  need ${bytes},
  primary key (job, unit)
);
create index unit_state on unit (job, state);

create table idempotency (
  caller varchar(100) not null,
  idempotency_key varchar(200) not null,
  digest varchar(64) not null,
  holder varchar(40) not null,
  taken_at bigint not null,
  answer ${bytes},
  location varchar(200),
  primary key (caller, idempotency_key)
);

-- tasks of units, as db-scheduler wants it
create table unit_tasks (
  task_name varchar(100) not null,
  task_instance varchar(100) not null,
  task_data ${bytes},
  execution_time timestamp with time zone not null,
  picked boolean not null,
  picked_by varchar(100),
  last_success timestamp with time zone,
  last_failure timestamp with time zone,
  consecutive_failures integer,
  last_heartbeat timestamp with time zone,
  version bigint not null,
  priority smallint,
  primary key (task_name, task_instance)
);
create index unit_tasks_execution_time on unit_tasks (execution_time);
create index unit_tasks_last_heartbeat on unit_tasks (last_heartbeat);

-- tasks beside them: messages to receivers, sweeping
create table other_tasks (
  task_name varchar(100) not null,
  task_instance varchar(100) not null,
  task_data ${bytes},
  execution_time timestamp with time zone not null,
  picked boolean not null,
  picked_by varchar(100),
  last_success timestamp with time zone,
  last_failure timestamp with time zone,
  consecutive_failures integer,
  last_heartbeat timestamp with time zone,
  version bigint not null,
  priority smallint,
  primary key (task_name, task_instance)
);
create index other_tasks_execution_time on other_tasks (execution_time);
create index other_tasks_last_heartbeat on other_tasks (last_heartbeat);
