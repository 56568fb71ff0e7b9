-- W3C Trace Context of the request that made a job. An older version of the service leaves both empty.

alter table job add column traceparent varchar(60);
alter table job add column tracestate varchar(512);
