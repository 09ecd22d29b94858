import { leadOf, waits } from './owner/kitchen-lead.ts';
import { type KitchenChoice, optionsOf } from './owner/kitchen-options.ts';
import { type KitchenRow, rowsOf } from './owner/kitchen-rows.ts';
import { testStatements } from './owner/old-roof.ts';
import { plannedStatements } from './owner/planned.ts';
import { situationOf } from './owner/situation.ts';
import { type OwnerStatement, standingOn, takerOf } from './owner/statement.ts';
import { stopStatements } from './owner/stops.ts';
import { wishStatements } from './owner/wishes.ts';
import { woodStatements, woodTitle } from './owner/wood.ts';
import type { Assessment } from './types.ts';

/** Two options side by side, as two people would weigh them at a table. */

export interface KitchenTable {
  choice: KitchenChoice;
  /** Why these two. */
  lead: OwnerStatement;
  /** What settles it first; empty where it is settled. */
  first: readonly OwnerStatement[];
  options: readonly string[];
  /** Numbers of the layouts that the options build; null = none. */
  layouts: readonly (number | null)[];
  rows: readonly KitchenRow[];
  /** What work the figures stand for. */
  planned: readonly OwnerStatement[];
  /** What was asked for, and what the plan makes of it. */
  wishes: readonly OwnerStatement[];
  /** Bad wood, or a deck that is not of wood. */
  woodTitle: string;
  wood: readonly OwnerStatement[];
  /** Something can be chosen, so there are lines to sign. */
  toSign: boolean;
}

export function kitchenTable(assessment: Assessment): KitchenTable {
  const situation = situationOf(assessment);
  const take = takerOf(assessment);
  const { choice, options } = optionsOf(situation, take);
  const open = waits(situation, choice);
  const stopped = stopStatements(situation).length > 0;
  return {
    choice,
    lead: standingOn(
      leadOf(situation, choice, { options: options.length, stopped }),
      take.quote('answer-layouts', 'The answer', 'headline'),
    ),
    first: open ? testStatements(situation) : [],
    options: options.map(({ title }) => title),
    layouts: options.map(({ layout }) => layout),
    rows: options.length === 0 ? [] : rowsOf(situation, take, choice !== 'wishes', options),
    planned:
      choice === 'edge-or-boards' || choice === 'wishes' || choice === 'barred' ? [] : plannedStatements(situation),
    wishes: wishStatements(situation),
    woodTitle: woodTitle(situation),
    wood: woodStatements(situation),
    // Nobody signs what an engineer, a way out or the old roof has to settle first.
    toSign: options.length > 0 && !open && !stopped,
  };
}

/** Every statement of the page, in its order. */
export const kitchenStatements = ({ lead, first, planned, wishes, rows, wood }: KitchenTable): OwnerStatement[] => [
  lead,
  ...first,
  ...planned,
  ...wishes,
  ...rows.flatMap(({ cells }) => cells.filter((cell) => cell !== null)),
  ...wood,
];
