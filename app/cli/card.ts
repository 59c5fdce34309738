import { cardData } from '../../core/card/card-data.ts';
import { cardText } from '../../core/card/card-text.ts';
import { planPage } from '../../core/card/plan/draw-plan.ts';
import { planData } from '../../core/card/plan/plan-data.ts';
import { layOutCard } from '../../core/card/sheet/lay-out-card.ts';
import { svgOfPage } from '../../core/card/sheet/svg-of-page.ts';
import { reportScheme } from '../../core/cautions/setup-report.ts';
import type { Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { pdfOfPages } from '../card/pdf-of-pages.ts';
import { cardFontFromPackage } from './card-font-files.ts';
import { cardPictures } from './card-pictures.ts';
import { type Command, CommandError } from './command.ts';
import { loadSetup } from './load-setup.ts';
import { readWords, type Words } from './read-words.ts';
import { checkWritable, writeOutput } from './write-output.ts';

const usage =
  'lampfall card FILE [--scheme ID] [--pdf out.pdf] [--svg plan.svg] [--text] [--paper a4|letter] [--lengths metres|feet]';

const chosenScheme = ({ schemes }: Setup, id: string | undefined): Scheme => {
  const scheme = id === undefined ? schemes[0] : schemes.find((each) => each.id === id);
  if (scheme) return scheme;
  throw new CommandError(
    `--scheme: there is no scheme "${id}"; known: ${schemes.map((each) => each.id).join(', ')}; usage: ${usage}`,
  );
};

/** One of a few words of an option, or its default. Throws `CommandError`. */
const choiceOption = <T extends string>({ option }: Words, name: string, choices: readonly T[], preset: T): T => {
  const word = option(name);
  if (word === undefined) return preset;
  const choice = choices.find((each) => each === word);
  if (choice !== undefined) return choice;
  throw new CommandError(`--${name} must be ${choices.join(' or ')}, not "${word}"; usage: ${usage}`);
};

/** A file that an option names; its name must end as what is written into it. Throws `CommandError`. */
const fileOption = ({ option }: Words, name: 'pdf' | 'svg'): string | undefined => {
  const file = option(name);
  if (file === undefined) return undefined;
  if (!file.toLowerCase().endsWith(`.${name}`))
    throw new CommandError(`--${name} must end in .${name}, not "${file}"; usage: ${usage}`);
  return file;
};

export const card: Command = {
  usage,
  about:
    'writes the field card of a scheme: as text, as a PDF (of one page where it fits), or its plan alone as SVG; without choice as text',
  run: async (line, { print }) => {
    const text = { type: 'string' } as const;
    const options = {
      scheme: text,
      pdf: text,
      svg: text,
      paper: text,
      lengths: text,
      text: { type: 'boolean' },
    } as const;
    const words = readWords(line, options, usage);
    const [pdf, svg] = [fileOption(words, 'pdf'), fileOption(words, 'svg')];
    const read = loadSetup(words.file);
    const setup: Setup = {
      ...read,
      card: {
        ...read.card,
        paper: choiceOption(words, 'paper', ['a4', 'letter'], read.card.paper),
        lengths: choiceOption(words, 'lengths', ['metres', 'feet'], read.card.lengths),
      },
    };
    const scheme = chosenScheme(setup, words.option('scheme'));
    for (const file of [pdf, svg]) if (file !== undefined) checkWritable(file);
    const report = reportScheme(setup, scheme);
    const data = cardData(setup, scheme, report);
    const plan = planData(setup, report);
    const title = `${setup.name}, ${scheme.name}`;
    if (svg !== undefined) writeOutput(svg, svgOfPage(planPage(data, plan), `Plan of ${title}`));
    if (pdf !== undefined) {
      const font = cardFontFromPackage();
      const { sensor } = scheme.camera ?? setup.camera;
      const pages = layOutCard(data, { plan, aspect: sensor.widthMm / sensor.heightMm, measure: font.measure });
      writeOutput(pdf, await pdfOfPages(pages, `Field card: ${title}`, font, cardPictures(setup, scheme)));
    }
    if (words.isSet('text') || (pdf === undefined && svg === undefined)) print(cardText(data));
  },
};
