/** The paper's numbers against the desk's lines and against what the Book shows. */
import type { Screen, Spot } from '../screen.ts';

export const BATTING: [paper: string, ours: string][] = [
  ...same('plate_appearances', 'at_bats', 'runs', 'hits', 'runs_batted_in', 'doubles', 'triples', 'home_runs', 'walks'),
  ...same('intentional_walks', 'strikeouts', 'hit_by_pitch', 'sacrifice_flies', 'stolen_bases', 'caught_stealing'),
  ...same('grounded_into_double_plays'),
  ['sacrifice_bunts', 'sacrifice_hits'],
];
export const PITCHING = [
  ...same('outs', 'batters_faced', 'hits', 'runs', 'earned_runs', 'walks', 'intentional_walks', 'strikeouts'),
  ...same('hit_batters', 'home_runs', 'wild_pitches', 'balks', 'pitches', 'balls', 'strikes'),
];
export const FIELDING = same('putouts', 'assists', 'errors', 'double_plays', 'passed_balls');

function same(...names: string[]): [string, string][] {
  return names.map((name) => [name, name]);
}

/** How many numbers were compared, and which differ, in words. */
export interface Comparison {
  compared: number;
  differing: string[];
}

/** Every number of every line on the paper against the desk's `lines --json`. */
export function withLines(paper: any, lines: any): Comparison {
  const found: Comparison = { compared: 0, differing: [] };
  const check = (what: string, expected: unknown, got: unknown): void => {
    found.compared += 1;
    if (expected !== got) found.differing.push(`${what}: ${String(expected)} on paper, ${String(got)} here`);
  };
  for (const [i, side] of (['visitors', 'home'] as const).entries()) {
    const [score, box] = [lines.line_score.sides[i], lines.box_score.sides[i]];
    const theirs = paper.line_score[side];
    check(`${side} innings`, theirs.innings.join(' '), score.innings.join(' '));
    for (const [short, long] of [['r', 'runs'], ['h', 'hits'], ['e', 'errors'], ['lob', 'left_on_base']] as const) {
      check(`${side} ${long}`, theirs[short], score[long]);
    }
    check(`${side} came up`, paper.proof[side].left_side, lines.proof[i].came_up);
    check(`${side} accounted for`, paper.proof[side].right_side, lines.proof[i].accounted_for);
    for (const [section, list, columns] of [
      ['batting', 'players', BATTING],
      ['pitching', 'pitchers', PITCHING],
      ['fielding', 'players', FIELDING],
    ] as const) {
      const rows = paper[section][side][list];
      check(`${side} lines of ${section}`, rows.length, box[section].length);
      for (const row of rows) {
        const ours = box[section].find((line: any) => line.name === row.name);
        for (const [key, our] of columns) check(`${row.name} ${key}`, row[key], ours?.[our]);
      }
    }
    for (const row of paper.pitching[side].pitchers) {
      const ours = box.pitching.find((line: any) => line.name === row.name);
      check(`${row.name} decision`, row.decision?.[0]?.toUpperCase() ?? null, ours?.decision);
    }
  }
  return found;
}

/** A table of the Book, a row a player: the name, then what stands under each heading. */
async function table(of: Spot): Promise<Map<string, Record<string, string>>> {
  const rows = await of.evaluateAll(([table]) => {
    const text = (el: Element | null | undefined) => el?.textContent?.trim() ?? '';
    const heads = [...table!.querySelectorAll('thead th')].map(text);
    return [...table!.querySelectorAll('tbody tr')].map((row) => {
      const cells = [...row.children].map(text);
      const name = text(row.querySelector('.who'));
      return [name, Object.fromEntries(heads.map((head, i) => [head, cells[i] ?? '']))] as const;
    });
  });
  return new Map(rows);
}

const SHOWN: [section: string, list: string, title: string, columns: [string, string][]][] = [
  ['batting', 'players', 'At bat', [['AB', 'at_bats'], ['R', 'runs'], ['H', 'hits'], ['RBI', 'runs_batted_in'], ['BB', 'walks'], ['K', 'strikeouts']]],
  ['pitching', 'pitchers', 'Pitching', [['IP', 'innings'], ['H', 'hits'], ['R', 'runs'], ['ER', 'earned_runs'], ['BB', 'walks'], ['K', 'strikeouts'], ['BF', 'batters_faced'], ['P', 'pitches'], ['S', 'strikes']]],
  ['fielding', 'players', 'In the field', [['PO', 'putouts'], ['A', 'assists'], ['E', 'errors'], ['DP', 'double_plays'], ['PB', 'passed_balls']]],
];

/** Every number the Book shows, line score and both box scores, against the paper. */
export async function withBook(page: Screen, paper: any): Promise<Comparison> {
  const found: Comparison = { compared: 0, differing: [] };
  const check = (what: string, expected: unknown, got: unknown): void => {
    found.compared += 1;
    if (String(expected) !== got) found.differing.push(`${what}: ${String(expected)} on paper, ${String(got)} in the Book`);
  };
  for (const [i, side] of (['visitors', 'home'] as const).entries()) {
    const row = page.locator('.scoreboard tbody tr').nth(i);
    const cells = (await row.locator('td').allInnerTexts()).map((text) => text.trim());
    const theirs = paper.line_score[side];
    check(`${side} board`, [...theirs.innings, theirs.r, theirs.h, theirs.e].join(' '), cells.join(' '));
    for (const [section, list, title, columns] of SHOWN) {
      const rows = await table(page.locator('.boxes > .side').nth(i).getByRole('region', { name: title }).locator('table'));
      for (const line of paper[section][side][list]) {
        const ours = rows.get(line.name);
        for (const [head, key] of columns) check(`${line.name} ${key}`, line[key], ours?.[head]);
      }
    }
  }
  return found;
}
