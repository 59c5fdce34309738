import type { Finish, Part } from '../../../../core/setup/schema/setup.ts';
import { partWords } from '../../state/edits/new-parts.ts';
import { Slip } from '../../ui/Slip.tsx';
import { PartForm } from './PartForm.tsx';
import { sizeText } from './size-text.ts';

interface PartSlipProps {
  readonly subjectId: string;
  readonly index: number;
  readonly part: Part;
  readonly finishOfSubject: Finish;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  readonly onDuplicate: () => void;
  readonly onMove: (by: 1 | -1) => void;
  readonly onRemove: () => void;
}

/** A part as a strip that opens. */
export const PartSlip = (props: PartSlipProps) => {
  const { subjectId, index, part, finishOfSubject, isOpen, onToggle, onDuplicate, onMove, onRemove } = props;
  const head = (
    <>
      <span className="quiet">{index + 1}</span>
      <strong>{part.name || partWords[part.kind]}</strong>
      <span className="quiet">{sizeText(part)}</span>
    </>
  );
  return (
    <Slip head={head} isOpen={isOpen} onToggle={onToggle}>
      <PartForm subjectId={subjectId} index={index} part={part} finishOfSubject={finishOfSubject} />
      <div className="actions">
        <button type="button" onClick={onDuplicate}>
          Duplicate part
        </button>
        <button type="button" onClick={() => onMove(-1)}>
          Up
        </button>
        <button type="button" onClick={() => onMove(1)}>
          Down
        </button>
        <button type="button" onClick={onRemove}>
          Delete part
        </button>
      </div>
    </Slip>
  );
};
