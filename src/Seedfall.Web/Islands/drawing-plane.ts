// Degrees to meters east and north of a fixed point: the plane that touches the WGS 84 ellipsoid there, as on the server.

import type { Corner, Origin } from "./drawing-model";

const EQUATOR_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const E2 = FLATTENING * (2 - FLATTENING);
const RAD = Math.PI / 180;

export function toGround(origin: Origin, lat: number, lon: number): Corner {
  const sine = Math.sin(origin.lat * RAD);
  const bulge = 1 - E2 * sine * sine;
  const north = ((EQUATOR_M * (1 - E2)) / (bulge * Math.sqrt(bulge))) * RAD;
  const east = (EQUATOR_M / Math.sqrt(bulge)) * Math.cos(origin.lat * RAD) * RAD;
  const apart = ((((lon - origin.lon + 180) % 360) + 360) % 360) - 180;
  return { e: apart * east, n: (lat - origin.lat) * north };
}
