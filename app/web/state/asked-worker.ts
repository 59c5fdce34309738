interface Question<Answer> {
  /** What is sent; `isNew` to a worker that has been sent nothing yet. */
  readonly request: (id: number, isNew: boolean) => object;
  readonly onAnswer: (answer: Answer) => void;
  /** Told when two workers were lost over it. */
  readonly onFail: () => void;
}

/** Workers that may be lost over one question. */
const mostLost = 2;
/** How long a worker may be silent before it counts as lost, milliseconds: longer than any question takes. */
const mostSilentMilliseconds = 120_000;

/**
 * A worker that is asked one question at a time. One that is lost, whether it came upon something that it can't read, could
 * not be loaded at all or says nothing, is started anew once and asked again; after that, or where the browser gives no
 * worker, the question fails, and the next one begins afresh.
 */
export const askedWorker = <Answer extends { readonly id: number }>(start: () => Worker) => {
  let worker: Worker | null = null;
  let pending: (Question<Answer> & { readonly id: number }) | null = null;
  let [asked, lost] = [0, 0];
  let silence: ReturnType<typeof setTimeout> | undefined;

  const lose = (gone: Worker): void => {
    gone.terminate();
    if (worker !== gone) return;
    worker = null;
    clearTimeout(silence);
    const question = pending;
    pending = null;
    if (!question) return;
    lost++;
    if (lost < mostLost) send(question);
    else question.onFail();
  };
  const begin = (): Worker => {
    const started = start();
    started.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (worker !== started || data.id !== pending?.id) return;
      clearTimeout(silence);
      const { onAnswer } = pending;
      pending = null;
      onAnswer(data);
    };
    started.onerror = () => lose(started);
    started.onmessageerror = () => lose(started);
    return started;
  };
  let hasSent = false;
  const send = (question: Question<Answer>): void => {
    pending = { ...question, id: ++asked };
    try {
      if (!worker) [worker, hasSent] = [begin(), false];
      const own = worker;
      silence = setTimeout(() => lose(own), mostSilentMilliseconds);
      worker.postMessage(question.request(pending.id, !hasSent));
      hasSent = true;
    } catch {
      // the browser gives no worker, or can’t send it so much
      worker?.terminate();
      clearTimeout(silence);
      [worker, pending] = [null, null];
      question.onFail();
    }
  };
  return {
    get isBusy(): boolean {
      return pending !== null;
    },
    /** Starts the worker before the first question, so that it is there when the network is not. */
    start: (): void => {
      try {
        if (!worker) [worker, hasSent] = [begin(), false];
      } catch {
        // the first question tries again, and tells
      }
    },
    ask: (question: Question<Answer>): void => {
      lost = 0;
      send(question);
    },
  };
};
