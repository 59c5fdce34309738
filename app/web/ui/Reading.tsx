import type { ReactNode } from 'react';
import type { ReadingName } from '../../../core/readings/about/all-readings.ts';
import { useWhy } from './use-why.tsx';

interface ReadingProps {
  readonly about: ReadingName;
  readonly name: ReactNode;
  readonly children: ReactNode;
}

/** A row of a list of numbers; its name unfolds what stands behind it. */
export const Reading = ({ about, name, children }: ReadingProps) => {
  const { button, text } = useWhy({ reading: about }, name);
  return (
    <div className="row">
      <dt>{button}</dt>
      <dd>{children}</dd>
      {text && <dd className="why-row">{text}</dd>}
    </div>
  );
};

/** The same within a line of numbers: the text takes the whole width under it. */
export const ReadingInLine = ({ about, name, children, title }: ReadingProps & { readonly title?: string }) => {
  const { button, text } = useWhy({ reading: about }, name);
  return (
    <>
      <span title={title}>
        {button} {children}
      </span>
      {text}
    </>
  );
};
