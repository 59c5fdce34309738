import { StorageProblem } from './storage-problem.ts';

/** A promise that fails with a `StorageProblem` when it takes too long. */
export const within = <T>(milliseconds: number, promise: Promise<T>): Promise<T> => {
  let timer: ReturnType<typeof setTimeout>;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new StorageProblem('hangs')), milliseconds);
  });
  return Promise.race([promise, late]).finally(() => clearTimeout(timer));
};
