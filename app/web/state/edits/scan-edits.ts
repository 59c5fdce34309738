import type { PackedScan } from '../../../../core/scan/scan-code.ts';
import type { Finish, Setup } from '../../../../core/setup/schema/setup.ts';
import { subject } from '../../../../core/setup/schema/subject.ts';
import { savedSizeFault } from '../../../../core/setup/setup-size.ts';
import { addSubject, type WithSubject } from './add-subjects.ts';
import { EditRefused } from './edit-refused.ts';
import { plainName } from './plain-name.ts';
import { pruneScans } from './prune-scans.ts';
import { freshId } from './within.ts';

/** Most scans of a setup, as the document takes them. */
const maxScans = 8;

/** "my rock.v2.glb" -> "my rock.v2". */
const nameOf = (fileName: string): string => fileName.replace(/\.[A-Za-z0-9]{1,5}$/, '');

/**
 * A scan put into the setup as a subject where the camera looks.
 *
 * @param reflectance of its surface on the whole; its colours are drawn round it
 * @throws EditRefused when there are too many scans, or the setup could not be opened again
 */
export const addScanSubject = (
  setup: Setup,
  schemeId: string,
  fileName: string,
  packed: PackedScan,
  reflectance: Finish['reflectance'],
): WithSubject => {
  const kept = pruneScans(setup);
  if (kept.scans.length >= maxScans)
    throw new EditRefused(`There are ${maxScans} scans already; more are not kept. Delete one first.`);
  const id = freshId(kept.scans, 'scan');
  const name = plainName(nameOf(fileName)) || 'Scan';
  const scan = { ...packed, sizeMetres: [...packed.sizeMetres] as [number, number, number], id, name };
  const scans = [...kept.scans, { ...scan, fileName: plainName(fileName) || 'scan' }];
  const tooLong = savedSizeFault({ ...kept, scans });
  if (tooLong) throw new EditRefused(`With this scan ${tooLong}. Thin it before, or delete another.`);
  const made = subject.parse({ id: 'scan', name, finish: { reflectance }, parts: [{ kind: 'scan', scanId: id }] });
  return addSubject({ ...kept, scans }, schemeId, made);
};
