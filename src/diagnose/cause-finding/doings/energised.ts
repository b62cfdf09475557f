import type { Ask } from '../../../model/ask.ts';
import { verticalAxes } from '../../../model/machine.ts';
import type { Glimpse } from '../../../model/outcomes.ts';
import { timeToAnswer, timeToPlug } from '../../limits.ts';
import { type Asking, refusal } from '../../procedures/asking.ts';
import { untilUnbroken } from '../../procedures/motors-off.ts';
import type { Doing, NotDone, Site } from '../site.ts';
import { watched } from './presses.ts';

const check = 'troubleshoot' as const;

/**
 * What needs drive power, one thing at a time: everyone clear, power on by the person's own control, the one thing, power off and
 * the prop back. The stop was proved in an earlier session, or there is none on file and a hard-wired one is confirmed.
 */
export const energised = (topic: 'drives' | 'spindle' | 'axis'): Doing<Glimpse> =>
  function* (site) {
    const refused = yield* powerOn(site);
    if (refused) return refused;
    const done = yield* watched(topic, false)(site);
    return (yield* powerOff(site)) ? done : { missing: 'motors-not-off', ends: true };
  };

function* powerOn(site: Site): Asking<NotDone | undefined> {
  const { latest, of } = site;
  const confirm = { check, action: 'confirm', seconds: timeToAnswer } as const;
  const asks: readonly Ask[] = [
    ...(hasStop(site) ? [] : [{ ...confirm, topic: 'hard-wired-stop' } as const]),
    { ...confirm, topic: 'stop-area-clear', subject: of.subject } as const,
    { check, action: 'power', what: 'motors', to: 'on', seconds: timeToPlug } as const,
  ];
  for (const ask of asks) {
    const ended = yield* untilUnbroken(ask, latest);
    if (ended.answer === 'yes' || ended.answer === 'done') continue;
    return { missing: refusal(ended) ?? 'not-confirmed', kind: 'energised' };
  }
  site.motorsOn = true;
  return undefined;
}

function* powerOff(site: Site): Asking<boolean> {
  const { latest, scene } = site;
  const off = { check, action: 'power', what: 'motors', to: 'off', seconds: timeToPlug } as const;
  if ((yield* untilUnbroken(off, latest)).answer !== 'done') return false;
  site.motorsOn = false;
  const axes = verticalAxes(scene.machine);
  if (axes.length === 0) return true;
  const prop = { check, action: 'confirm', topic: 'propped', axes, seconds: timeToAnswer } as const;
  return (yield* untilUnbroken(prop, latest)).answer === 'yes';
}

export const hasStop = ({ scene }: Pick<Site, 'scene'>): boolean =>
  scene.machine.inputs.some(({ switches }) => switches.some(({ duty }) => duty.includes('stop')));
