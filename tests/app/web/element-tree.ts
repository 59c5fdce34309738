import { isValidElement, type ReactElement, type ReactNode } from 'react';

/** Properties of an element, with its handlers as a test calls them. */
export type Props = Readonly<Record<string, (...told: unknown[]) => void>> & { readonly children?: ReactNode };

/** Every element of a tree; components among them are not drawn. */
export const elementsOf = (node: ReactNode): ReactElement<Props>[] => {
  if (Array.isArray(node)) return node.flatMap(elementsOf);
  if (!isValidElement<Props>(node)) return [];
  return [node, ...elementsOf(node.props.children)];
};
