import { observe } from '../check.js';
import type { Check } from '../check.js';

export const ambientOutOfRange: Check = {
  code: 'ambient/out-of-range',
  title: 'Temperature or humidity outside the range of the method',
  severity: 'held',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['content', 'method', 'temperatureC'],
  explains: 'Nylon in particular changes with humidity; a method version states the range in which its figures may be compared.',
  limit: 'The method version states both ranges.',
  source: 'common practice; standard atmospheres of ISO 139 for textiles',
  example: '29 °C in the loft, where the method asks for 18 °C to 26 °C.',
  run({ temperatureC, content, method }) {
    const { ambientTemperatureC: temperature, ambientHumidityPercent: humidity } = method.limits;
    const humidityPercent = Number(content.ambient.humidityPercent);
    const observations = [];
    if (temperatureC < temperature.low || temperatureC > temperature.high) {
      observations.push(
        observe(`${temperatureC} °C is outside ${temperature.low} to ${temperature.high} °C.`, {
          actual: `${temperatureC} °C`,
          expected: `${temperature.low} to ${temperature.high} °C`,
          pointer: '/ambient/temperature',
        }),
      );
    }
    if (humidityPercent < humidity.low || humidityPercent > humidity.high) {
      observations.push(
        observe(`${humidityPercent} % relative humidity is outside ${humidity.low} to ${humidity.high} %.`, {
          actual: `${humidityPercent} %`,
          expected: `${humidity.low} to ${humidity.high} %`,
          pointer: '/ambient/humidityPercent',
        }),
      );
    }
    return observations;
  },
};
