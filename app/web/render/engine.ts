import type { Scene } from './scene.ts';
import type { TraceCounters } from './trace-counters.ts';

export interface EngineState {
  readonly counters: TraceCounters;
  /** Different layers that are wanted now. */
  readonly layers: number;
  /** Pictures mixed and developed since the start. */
  readonly developed: number;
  /** Fewest samples in what is shown. */
  readonly samples: number;
  readonly isConverged: boolean;
  /** Share of the samples wanted that have been traced, 0 to 1. */
  readonly progress: number;
  /** Texels that fit one job's time budget, as learnt. */
  readonly texelsPerJob: Readonly<Record<string, number>>;
}

/** What draws scenes onto the screens of the page: the graphics card, or the processor. */
export interface Engine {
  readonly state: EngineState;
  /** Asks for a scene; it takes the place of the one before. */
  show(scene: Scene): void;
  /** Draws the screens if anything changed since they were last drawn. */
  draw(ratio: number): void;
  /** Draws what there is once more, onto screens that were put up since. */
  refresh(): void;
  /** Whether nothing is traced for now, because nobody looks. */
  setResting(isResting: boolean): void;
  /** Traces all anew. */
  restart(): void;
  /** Gives back what is held for sizes that are no longer drawn. */
  shrink(): void;
  forgetCounts(): void;
}
