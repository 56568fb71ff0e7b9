/** Drawing on the board by pointer or by keys, with one tool at a time. */

import { byId } from './dom.js';
import { drawBoard } from './board.js';
import { unitName } from './format.js';
import { OpeningTool } from './opening-tool.js';
import { ReadingTool } from './reading-tool.js';
import { cornersOf, RoomTool } from './room-tool.js';
import { pointsOf } from './survey.js';
import { ViewBox } from './view-box.js';

/** @typedef {import('./store.js').Store} Store */
/** @typedef {import('./geometry.js').Point} Point */

const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const CLOSER = 1.5;

export class Drawing {
  /** Where the cross is. @type {Point | null} */
  cursor = null;
  #wider = 1;
  #units = '';

  /** @param {Store} store @param {(text: string) => void} say */
  constructor(store, say) {
    this.store = store;
    this.say = say;
    this.board = byId('board');
    const show = () => this.show();
    this.room = new RoomTool(store, say, show);
    this.tools = {
      room: this.room,
      exit: new OpeningTool('exit', store, say),
      doorway: new OpeningTool('doorway', store, say),
      reading: new ReadingTool(store, say, this.board),
    };
    this.tool = this.tools.room;
    this.#bind();
    store.listen((change) => this.#changed(change));
  }

  /** Draws all of it; what is seen stays the same while a room is unfinished. */
  show() {
    const { request } = this.store;
    if (this.room.unfinished.length === 0) {
      const points = [...cornersOf(request.rooms), ...pointsOf(request.survey).map(({ x, y }) => [x, y])];
      const width = Math.max(280, this.board.clientWidth);
      this.view = new ViewBox(this.store.units, points, width, Math.round(width * 0.66), this.#wider);
    }
    drawBoard(this.board, this.view, request, { corners: this.room.unfinished, cursor: this.cursor });
  }

  /** What is only begun goes with another request, and stays in other units. */
  #changed({ whole }) {
    const { units } = this.store;
    if (whole) {
      this.tool.stop();
    } else if (this.#units !== units) {
      Object.values(this.tools).forEach((tool) => tool.convertTo(units));
    }
    this.cursor = this.#units === units && !whole ? this.cursor : null;
    this.#units = units;
    this.show();
  }

  #bind() {
    byId('tools').addEventListener('change', (event) => this.#use(this.tools[event.target.value]));
    byId('board-wider').addEventListener('click', () => this.#zoom(CLOSER));
    byId('board-closer').addEventListener('click', () => this.#zoom(1 / CLOSER));
    this.board.addEventListener('pointermove', (event) => this.#move(event));
    this.board.addEventListener('pointerleave', () => this.#leave());
    this.board.addEventListener('click', (event) => this.#click(event));
    this.board.addEventListener('keydown', (event) => this.#key(event));
    new ResizeObserver(() => this.show()).observe(this.board);
  }

  #use(tool) {
    this.tool.stop();
    this.tool = tool;
    byId('board-hint').textContent = tool.hint;
    this.show();
  }

  #zoom(by) {
    this.#wider *= by;
    this.show();
  }

  #move(event) {
    const box = this.board.getBoundingClientRect();
    const scale = this.view.width / box.width;
    const at = this.view.toPlan([(event.clientX - box.left) * scale, (event.clientY - box.top) * scale]);
    this.cursor = this.view.snap(at, this.tool.corners());
    this.show();
  }

  #leave() {
    if (document.activeElement !== this.board) {
      this.cursor = null;
      this.show();
    }
  }

  #click(event) {
    this.#move(event);
    this.tool.act(this.cursor);
  }

  #step([dx, dy], steps) {
    const from = this.cursor ?? this.view.snap(this.view.middle, []);
    const step = this.view.step * steps;
    this.cursor = this.view.snap([from[0] + dx * step, from[1] + dy * step], []);
    this.say(`${this.cursor.join(', ')} ${unitName(this.store.units, 'plan')}`);
    this.show();
  }

  #key(event) {
    if (ARROWS[event.key]) {
      this.#step(ARROWS[event.key], event.shiftKey ? 10 : 1);
    } else if ((event.key === 'Enter' || event.key === ' ') && this.cursor !== null) {
      this.tool.act(this.cursor);
    } else if (event.key === 'Backspace') {
      this.room.undo();
    } else if (event.key === 'Escape') {
      this.#use(this.tool);
    } else {
      return;
    }
    event.preventDefault();
  }
}
