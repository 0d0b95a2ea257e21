/** Where a new file begins: sound, and with nothing in it that need not be. */
import airframeA from '../../../scenarios/airframes/airframe-a.json?raw';

/** Every number of an airframe must be there, so it begins as the first shipped one under another name. */
export const emptyAirframe = airframeA
  .replace(/^\/\/.*\n/, '').replace(/ *"\$schema".*\n/, '')
  .replace('"airframe-a"', '"my-airframe"').replace('"Airframe A (invented)"', '"New airframe"');

/** Nothing goes wrong in it yet: a hold from 4 to 16. */
export const emptyScenario = `{
  "format": 1,
  "title": "New scenario",
  "brief": "Level at 5600 ft, flaps at 4, 167 kt by the speed hold. Lever to 16, guard open, arm, drive to 16. If the pointers part, let go and call it.",
  "airframe": "airframe-a",
  "start": { "massT": 48, "altitudeFt": 5600, "groundFt": 700, "speedKt": 167, "flapDeg": 4 },
  "task": { "settings": [16], "limitS": 180 },
  "faults": [],
  "events": []
}
`;

export const emptySet = `{
  "format": 1,
  "title": "New set",
  "brief": "Short runs. In each you drive the flaps out and watch; in some the pointers part, in some nothing happens. Let go as soon as you see them part, and call it; otherwise hold to the end. The first release of a run is the one that counts. This is measuring: in the aeroplane let go in doubt.",
  "scenario": {
    "format": 1,
    "title": "One run of the set",
    "brief": "Flaps at 4, lever at 16, speed hold at 167 kt. Drive toward 16 and watch both pointers. If they part, let go and call it. The run ends by itself.",
    "airframe": "airframe-a",
    "start": { "massT": 48, "altitudeFt": 5600, "groundFt": 700, "speedKt": 167, "flapDeg": 4, "flapLeverDeg": 16 },
    "task": { "settings": [16], "limitS": 180 }
  },
  "load": "calm",
  "rates": [{ "ratio": 0 }],
  "runs": 12,
  "quiet": 0.25,
  "onsetFromS": 3,
  "onsetForS": 30,
  "legS": 51,
  "limitDeg": 2.5,
  "points": { "falseRelease": 75, "missed": 100, "held": 50 }
}
`;

export const emptyTrainee = `{
  "format": 1,
  "trainee": "steady",
  "title": "New trainee"
}
`;
