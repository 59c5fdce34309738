import { memo, useCallback } from 'react';
import { useSaving } from '../state/page-saving.ts';
import type { SavingNews } from '../state/saving-state.ts';
import { Notice } from '../ui/Notice.tsx';
import { clearRemoved, openAgain, openOwn, undoRemove } from './own-actions.ts';
import { saveBroken, saveFile } from './save-file.ts';
import { newsWords } from './saving-words.ts';

/** What can be done about it. */
const actionsOf = (news: SavingNews): { label: string; onPress: () => void }[] => {
  const taken = () => useSaving.getState().take(news);
  switch (news.kind) {
    case 'problem':
      return [
        { label: 'Save as a file', onPress: saveFile },
        ...(news.problem === 'newer' ? [{ label: 'Reload', onPress: () => location.reload() }] : []),
      ];
    case 'changed elsewhere':
      return [{ label: 'Take it up', onPress: () => void openOwn(news.key).then(taken) }];
    case 'deleted':
      return [
        {
          label: 'Undo',
          onPress: () => {
            taken();
            void undoRemove(news);
          },
        },
      ];
    case 'not opened':
      return [{ label: 'Try again', onPress: () => void openAgain(news.last).then((isOpen) => isOpen && taken()) }];
    case 'broken':
      return [{ label: 'Save what is there as a file', onPress: () => saveBroken(news.name, news.text) }];
    default:
      return [];
  }
};

/** How long each stands; null = until it is closed. */
const secondsOf = ({ kind }: SavingNews): number | null =>
  kind === 'deleted' ? 15 : kind === 'brought back' || kind === 'deleted elsewhere' ? 12 : null;

const SavingNotice = memo(({ news }: { news: SavingNews }) => {
  const onClose = useCallback(() => {
    useSaving.getState().take(news);
    if (news.kind === 'deleted') clearRemoved(news.key);
  }, [news]);
  const isGood = news.kind === 'deleted' || news.kind === 'brought back';
  return (
    <Notice
      tone={isGood ? 'done' : 'problem'}
      text={newsWords(news)}
      actions={actionsOf(news)}
      seconds={secondsOf(news)}
      onClose={onClose}
    />
  );
});

/** What is to be told of keeping setups, at the foot of the page. */
export const SavingNotices = () => {
  const news = useSaving((state) => state.news);
  if (news.length === 0) return null;
  return (
    <div className="saving-news">
      {news.map((each) => (
        <SavingNotice key={each.kind === 'deleted' ? `deleted ${each.key}` : each.kind} news={each} />
      ))}
    </div>
  );
};
