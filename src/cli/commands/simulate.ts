import { type Hypothesis, hypothesesOf, injectionOf } from '../../diagnosis/belief/hypotheses.ts';
import { setUp } from '../../plant/plant.ts';
import { didYouMean } from '../../records/nearest.ts';
import { caseInput } from '../case-input.ts';
import { type Answer, type Around, badInput, type Command, type Given, usageError } from '../command.ts';
import { installationData, NOTHING_FITS, type Ready, readyInstallation } from '../installation.ts';
import { figures } from '../print.ts';
import { simulatedReading } from '../simulated-reading.ts';

/** What every check would read on the installation of a case with one fault put into it. */
export const simulate: Command = {
  usage: 'simulate CASE.json --fault ID [--variant ID] [--severity NUMBER]',
  about: 'what every check would read with this fault; severity in ohm, or as a factor',
  run,
};

export const SIMULATE_FLAGS = ['fault', 'variant', 'severity'];

async function run(given: Given, around: Around): Promise<Answer> {
  if (!given.flags.has('fault')) return usageError('name the fault: --fault ID');
  const input = await caseInput(given, around);
  if ('answer' in input) return input.answer;
  const ready = readyInstallation(around, input.state);
  if (ready === undefined) return badInput(NOTHING_FITS);
  const chosen = chooseFault(given, around, ready);
  if ('wrong' in chosen) return badInput(chosen.wrong);
  const { choice } = ready;
  const injection = injectionOf(chosen.hypothesis, chosen.severity);
  const plant = setUp(choice.input, choice.spreads).state(injection, {});
  const { fault } = chosen.hypothesis;
  const asked = { catalog: around.catalog, windows: ready.windows, plant, meter: input.state.meter, fault };
  const data = {
    case: input.state.case,
    contentVersion: around.catalog.version,
    ...installationData(ready),
    ...faultData(chosen),
    mode: plant.mode,
    readings: ready.checks.map((check) => ({ check: check.id, ...simulatedReading(asked, check) })),
  };
  return { kind: 'data', data };
}

interface Chosen {
  readonly hypothesis: Hypothesis;
  readonly severity: number | undefined;
}

function faultData({ hypothesis, severity }: Chosen) {
  const said = severity === undefined ? undefined : figures(severity);
  return { fault: hypothesis.fault.id, variant: hypothesis.variant, severity: said };
}

/** The fault, variant and severity that were asked for, or why there is none such here. */
function chooseFault(
  { flags }: Given,
  { catalog }: Around,
  ready: Ready,
): Chosen | { readonly wrong: string } {
  const id = flags.get('fault') ?? '';
  if (!Object.hasOwn(catalog.faults, id))
    return { wrong: `--fault: there is no fault "${id}". ${suggestion(id, Object.keys(catalog.faults))}` };
  const here = hypothesesOf(catalog, ready.system).filter(
    (one) => one.fault.id === id && one.choice === 0 && one.cause === undefined,
  );
  const variants = here.map((one) => one.variant);
  const [first] = here;
  if (first === undefined)
    return { wrong: `--fault: ${id} cannot occur on ${ready.choice.box.id}: it lacks the parts.` };
  const wanted = flags.get('variant') ?? first.variant;
  const hypothesis = here.find((one) => one.variant === wanted);
  if (hypothesis === undefined)
    return {
      wrong: `--variant: ${id} has no variant "${wanted}" here. Write one of ${variants.join(', ')}.`,
    };
  return withSeverity(hypothesis, flags.get('severity'));
}

function suggestion(id: string, known: readonly string[]): string {
  const meant = didYouMean(id, known);
  return meant === '' ? 'The command "list faults" prints them.' : meant.trim();
}

/** The middle of the fault's own span unless a severity within it is given. */
function withSeverity(hypothesis: Hypothesis, text: string | undefined): Chosen | { readonly wrong: string } {
  const { severity, id } = hypothesis.fault;
  if (severity === undefined) {
    return text === undefined
      ? { hypothesis, severity: undefined }
      : { wrong: `--severity: ${id} has no severity.` };
  }
  const { low, high } = severity.span;
  if (text === undefined) {
    return { hypothesis, severity: severity.scale === 'log' ? Math.sqrt(low * high) : (low + high) / 2 };
  }
  const value = Number(text);
  if (!Number.isFinite(value)) return { wrong: `--severity: "${text}" is not a number.` };
  if (value < low || value > high) {
    return {
      wrong: `--severity: ${text} is outside what ${id} spans. Write ${figures(low)} to ${figures(high)}.`,
    };
  }
  return { hypothesis, severity: value };
}
