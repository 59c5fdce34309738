import type { PackedScan } from '../../../core/scan/scan-code.ts';
import type { Placing } from '../scans/place-scan.ts';
import type { ScanSummary } from '../scans/summarize-scan.ts';

/** What the worker is asked: one file first, then how it stands in the world, as often as wanted. */
export type ScanRequest =
  | { readonly kind: 'read'; readonly file: File }
  | { readonly kind: 'measure'; readonly id: number; readonly placing: Placing }
  | { readonly kind: 'pack'; readonly id: number; readonly placing: Placing };

/** What it answers. Reasons are sentences without their full stops; reading has the id 0. */
export type ScanAnswer =
  | { readonly kind: 'progress'; readonly words: string }
  | { readonly kind: 'read'; readonly summary: ScanSummary }
  | { readonly kind: 'measured'; readonly id: number; readonly sizeMetres: PackedScan['sizeMetres'] }
  | { readonly kind: 'packed'; readonly id: number; readonly scan: PackedScan }
  | { readonly kind: 'failed'; readonly id: number; readonly why: string };
