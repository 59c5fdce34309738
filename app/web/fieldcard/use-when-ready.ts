import { useEffect, useRef, useState } from 'react';

/** What takes the card out of the page with its pictures. */
export type Wanted = 'print' | 'pdf';

/** Takes the card out as soon as nothing is on its way any more; asked a second time, at once. */
export const useWhenReady = (isComing: boolean, take: (what: Wanted) => void) => {
  const [wanted, setWanted] = useState<Wanted | null>(null);
  const latest = useRef(take);
  useEffect(() => {
    latest.current = take;
  });
  useEffect(() => {
    if (wanted === null || isComing) return;
    setWanted(null);
    latest.current(wanted);
  }, [wanted, isComing]);
  const ask = (what: Wanted) => {
    if (isComing && wanted !== what) return setWanted(what);
    setWanted(null);
    take(what);
  };
  return { wanted, ask };
};
