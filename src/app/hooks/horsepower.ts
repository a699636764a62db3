/**
 * Horsepower as plates print it: 1/2, 3/4, 1 1/2, 7 1/2.
 *
 * @example
 * horsepower(1.5) // => '1 1/2'
 */
export function horsepower(power: number): string {
  const quarters = Math.round(power * 4);
  const whole = Math.floor(quarters / 4);
  const rest = ['', '1/4', '1/2', '3/4'][quarters % 4] ?? '';
  if (Math.abs(power * 4 - quarters) > 0.05) return String(power);
  return [whole === 0 && rest !== '' ? '' : String(whole), rest].filter((one) => one !== '').join(' ');
}
