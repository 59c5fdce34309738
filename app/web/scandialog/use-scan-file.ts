import { useEffect, useRef, useState } from 'react';
import type { PackedScan } from '../../../core/scan/scan-code.ts';
import type { Placing } from '../scans/place-scan.ts';
import type { ScanSummary } from '../scans/summarize-scan.ts';
import { isStopped, readScanFile, type ScanReader } from '../state/scan-reader.ts';

/** A file with a scan on its way into the setup. */
export interface ScanFile {
  /** What is in it; null until it is read. */
  readonly summary: ScanSummary | null;
  /** What is being done. */
  readonly words: string;
  /** Why it can’t be used, a sentence without its full stop; null = nothing is wrong. */
  readonly fault: string | null;
  /** Why it can’t be brought in as it is placed now, a sentence without its full stop; null = nothing is known. */
  readonly placingFault: string | null;
  readonly placing: Placing | null;
  /** Its size when placed so; null until it is measured. */
  readonly sizeMetres: PackedScan['sizeMetres'] | null;
  readonly isBusy: boolean;
  readonly place: (part: Partial<Placing>) => void;
  /** The scan for the document; null where that failed. */
  readonly pack: () => Promise<PackedScan | null>;
}

/** Reads a file in a worker as long as the dialog is there. */
export const useScanFile = (file: File): ScanFile => {
  const reader = useRef<ScanReader | null>(null);
  const [summary, setSummary] = useState<ScanSummary | null>(null);
  const [words, setWords] = useState('Reading the file');
  const [fault, setFault] = useState<string | null>(null);
  const [placingFault, setPlacingFault] = useState<string | null>(null);
  const [placing, setPlacing] = useState<Placing | null>(null);
  const [sizeMetres, setSize] = useState<PackedScan['sizeMetres'] | null>(null);
  const [isBusy, setIsBusy] = useState(false);
  useEffect(() => {
    const reading = readScanFile(file, setWords);
    reader.current = reading;
    reading.summary
      .then((found) => {
        setSummary(found);
        setPlacing({ unit: found.guess.unit, upAxis: found.guess.upAxis, turnDegrees: 0, scale: 1 });
      })
      .catch((error: Error) => {
        if (!isStopped(error)) setFault(error.message);
      });
    return () => reading.close();
  }, [file]);
  useEffect(() => {
    if (!placing) return;
    let isOld = false;
    reader.current
      ?.measure(placing)
      .then((size) => {
        if (!isOld) setSize(size);
      })
      .catch((error: Error) => {
        if (!isOld && !isStopped(error)) setFault(error.message);
      });
    return () => {
      isOld = true;
    };
  }, [placing]);
  const pack = async (): Promise<PackedScan | null> => {
    if (!placing || !reader.current) return null;
    setIsBusy(true);
    setPlacingFault(null);
    try {
      return await reader.current.pack(placing);
    } catch (error) {
      if (!isStopped(error)) setPlacingFault((error as Error).message);
      return null;
    } finally {
      setIsBusy(false);
    }
  };
  const place = (part: Partial<Placing>) => {
    setPlacingFault(null);
    setPlacing((now) => now && { ...now, ...part });
  };
  return { summary, words, fault, placingFault, placing, sizeMetres, isBusy, place, pack };
};
