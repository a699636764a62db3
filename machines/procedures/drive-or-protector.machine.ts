import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * A load protector or a drive stands between switch and motor. Did it stop the pump, and was it right?
 *
 * Display and code are read before anybody presses a button, since many forget. Each class of code names
 * its own proof: sensor against gauge, heat by hand, volts at the input, ohms of the motor with the drive
 * taken off. A dry-run stop is believed until the level is known; the device is bridged for a minute at
 * most, and only then.
 */
export const driveOrProtector = tree.createMachine({
  id: 'drive-or-protector',
  initial: 'display',
  states: {
    display: ask('device-display', {
      none: 'sound',
      normal: 'sensor',
      dark: 'input',
      'dry-run': 'dryStop',
      fault: 'code',
      'not-taken': 'code',
    }),
    code: ask('device-code', {
      none: 'sensor',
      'dry-run': 'dryStop',
      fault: 'outputOhms',
      sensor: 'sensor',
      hot: 'cooling',
      volts: 'inputBesideCode',
      'not-taken': 'sensor',
    }),

    dryStop: ask('device-settings', {
      right: 'airLine',
      wrong: 'setWrong',
      'not-taken': 'airLine',
    }),
    airLine: ask('airline-level', {
      'as-expected': 'bypass',
      low: 'bypass',
      high: 'ranDry',
      'not-taken': 'static',
    }),
    static: ask('static-level', {
      'as-expected': 'bypass',
      low: 'bypass',
      high: 'ranDry',
      'not-taken': 'undecided',
    }),
    bypass: ask('device-bypass', {
      'runs-normally': 'falseStop',
      same: 'ranDry',
      'not-taken': 'undecided',
    }),

    sensor: ask('device-sensor', {
      'follows-gauge': 'settings',
      off: 'sensorOff',
      'not-taken': 'settings',
    }),
    settings: ask('device-settings', {
      right: 'output',
      wrong: 'setWrong',
      'not-taken': 'output',
    }),
    output: ask('device-output', {
      balanced: 'sound',
      'lead-missing': 'outputOpen',
      none: 'outputOpen',
      'not-taken': 'bypassUntold',
    }),
    bypassUntold: ask('device-bypass', {
      'runs-normally': 'protectorFailed',
      same: 'sound',
      'not-taken': 'undecided',
    }),

    outputOhms: ask('drive-output-ohms', {
      balanced: 'outputBesideFault',
      'not-balanced': 'motorSide',
      'not-taken': 'outputBesideFault',
    }),
    outputBesideFault: ask('device-output', {
      balanced: 'undecided',
      'lead-missing': 'outputOpen',
      none: 'motorSideOrOutput',
      'not-taken': 'bypassUntold',
    }),
    cooling: ask('device-cooling', {
      cool: 'undecided',
      hot: 'tooHot',
      'not-taken': 'tooHot',
    }),
    inputBesideCode: ask('device-input-volts', {
      'as-expected': 'undecided',
      low: 'supplyLow',
      high: 'undecided',
      none: 'supply',
      'not-taken': 'supplyLow',
    }),
    input: ask('device-input-volts', {
      'as-expected': 'driveDead',
      low: 'supply',
      high: 'driveDead',
      none: 'supply',
      'not-taken': 'breakerOut',
    }),
    breakerOut: ask('volts-breaker-pair', {
      'as-expected': 'protectorFailed',
      low: 'supply',
      high: 'protectorFailed',
      none: 'supply',
      'not-taken': 'undecided',
    }),

    sound: clears('drive-or-protector'),
    ranDry: claims('protector-dry-trip'),
    falseStop: claims('protector-false-trip', 'protector-misset'),
    setWrong: claims('protector-misset', 'protector-false-trip', 'drive-misset'),
    protectorFailed: claims('protector-failed'),
    sensorOff: claims('drive-sensor-failed'),
    outputOpen: claims('drive-output-open'),
    motorSide: claims('drive-stopped-by-motor-side'),
    motorSideOrOutput: claims('drive-stopped-by-motor-side', 'drive-output-open'),
    tooHot: claims('drive-too-hot'),
    supplyLow: claims('drive-supply-low'),
    driveDead: claims('drive-dead'),
    supply: handsOver('supply'),
    undecided: undecided('drive-or-protector'),
  },
});
