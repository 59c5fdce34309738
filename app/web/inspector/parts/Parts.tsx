import { useState } from 'react';
import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { editTook } from '../../state/edit-took.ts';
import { type NewPartKind, newPartKinds, partWords } from '../../state/edits/new-parts.ts';
import { addPart, duplicatePart, removePart, reorderPart } from '../../state/edits/part-edits.ts';
import { Drop } from '../../ui/Drop.tsx';
import { Fold } from './Fold.tsx';
import { PartSlip } from './PartSlip.tsx';

/** So many parts are listed at a time. */
const pageOfParts = 24;

/** The parts of a subject, one by one in a list. */
export const Parts = ({ subject }: { subject: Subject }) => {
  const { id, parts, kit } = subject;
  const [openIndex, setOpenIndex] = useState<number | null>(null);
  const [most, setMost] = useState(pageOfParts);
  // after an edit that was refused, what is open stays so
  const actionsOf = (index: number) => ({
    onDuplicate: () => {
      if (editTook((s) => duplicatePart(s, id, index))) setOpenIndex(index + 1);
    },
    onMove: (by: 1 | -1) => {
      if (editTook((s) => reorderPart(s, id, index, index + by))) setOpenIndex(index + by);
    },
    onRemove: () => {
      if (editTook((s) => removePart(s, id, index))) setOpenIndex(null);
    },
  });
  const add = (kind: NewPartKind) => {
    if (!editTook((s) => addPart(s, id, kind))) return;
    setMost(parts.length + pageOfParts);
    setOpenIndex(parts.length);
  };
  return (
    <Fold title={parts.length === 1 ? '1 part' : `${parts.length} parts`} startsOpen={!kit && parts.length > 1}>
      {kit && (
        <p className="quiet">
          Change a part here and from then on the parts are yours: the numbers above, which make them anew, go.
        </p>
      )}
      <ul className="parts">
        {parts.slice(0, most).map((part, index) => (
          <PartSlip
            // parts have no names of their own; their place is what tells them apart
            // biome-ignore lint/suspicious/noArrayIndexKey: as said
            key={index}
            subjectId={id}
            index={index}
            part={part}
            finishOfSubject={subject.finish}
            isOpen={openIndex === index}
            onToggle={() => setOpenIndex(openIndex === index ? null : index)}
            {...actionsOf(index)}
          />
        ))}
      </ul>
      {parts.length > most && (
        <button type="button" onClick={() => setMost(most + pageOfParts)}>
          Show {Math.min(pageOfParts, parts.length - most)} more of {parts.length}
        </button>
      )}
      <Drop label="Add a part" listLabel="Add a part" closesOnPress>
        <div className="add-parts">
          {newPartKinds.map((kind) => (
            <button key={kind} type="button" onClick={() => add(kind)}>
              {partWords[kind]}
            </button>
          ))}
        </div>
      </Drop>
    </Fold>
  );
};
