/**
 * What each number of a plan request measures, by pointer with `*` for any index; the contract says
 * the same as x-dimension.
 */
export const DIMENSIONS = {
  plan: [
    '/crew/carryDistance', '/equipment/screedLength', '/grid/cell', '/premises/joistSpan',
    '/features/*/at/*', '/features/*/from/*', '/features/*/to/*', '/probes/*/x', '/probes/*/y',
    '/rooms/*/openings/*/from/*', '/rooms/*/openings/*/to/*', '/rooms/*/outline/coordinates/*/*/*',
    '/surface/steps/*/from/*', '/surface/steps/*/to/*', '/surface/variogram/range',
    '/survey/elevations/*/x', '/survey/elevations/*/y', '/survey/loopLength',
    '/survey/setups/*/readings/*/x', '/survey/setups/*/readings/*/y', '/survey/setups/*/x',
    '/survey/setups/*/y', '/target/ceiling/*/x', '/target/ceiling/*/y', '/target/fixed/*/x',
    '/target/fixed/*/y',
  ],
  height: [
    '/coveringThickness', '/features/*/depth', '/features/*/width', '/material/aggregate/minimumDepth',
    '/material/aggregate/neatCap', '/material/maximumLift', '/material/minimumLift',
    '/premises/joistSpacing', '/premises/sag',
    '/survey/benchmarks/*/elevation', '/survey/elevations/*/elevation', '/survey/misclosureLimit',
    '/survey/readingError', '/survey/setups/*/error', '/survey/setups/*/readings/*/reading',
    '/target/ceiling/*/elevation', '/target/elevation', '/target/fixed/*/elevation',
    '/target/fixed/*/tolerance', '/target/grind/maximumDepth', '/target/minimumDepth',
  ],
  heightVariance: ['/surface/variogram/nugget', '/surface/variogram/sill'],
  slope: ['/survey/laserTilt', '/target/maximumSlope', '/target/slopeX', '/target/slopeY'],
  area: ['/target/grind/areaPerHour'],
  fill: ['/material/yieldPerBag'],
  fillPrice: ['/target/prices/fill', '/target/prices/grind'],
  liquid: ['/material/waterPerBag', '/material/waterRange/from', '/material/waterRange/to'],
  coverage: ['/material/primerCoverage'],
  mass: ['/material/bagMass'],
  density: ['/material/aggregate/grainDensity', '/material/wetDensity'],
  temperature: [
    '/conditions/air', '/conditions/floor', '/conditions/powder', '/conditions/water',
    '/material/secondTime/workingTimeAt', '/material/temperatureRange/from',
    '/material/temperatureRange/to', '/material/workingTimeAt',
  ],
  temperatureDifference: ['/conditions/mixingHeat'],
  airspeed: ['/conditions/airspeed'],
  surfaceLoad: ['/premises/deadLoadAllowance'],
};
