// Air, thrust, drag and motion: sim/flight/atmosphere.ts, thrust.ts, motion.ts.
#pragma once
#include "numbers.h"

static inline double pressureRatio(double heightM) {
  const double x = heightM / 8000;
  return 1 + x * (-0.9484842972706813 + x * (0.36422875048888176 + x * (-0.07133555502614719
    + x * (0.007260163042612788 + x * (-0.0003290731860801088 + x * (2.5177422458000365e-6 + x * 5.737365427194163e-8))))));
}
static inline double temperatureRatio(double heightM) { return 1 - LAPSE * heightM / T0; }
static inline double soundOf(double theta) { return std::sqrt(1.4 * GAS * T0 * theta); }
static double casOfMach(double mach, double delta) {
  const double u = 1 + 0.2 * mach * mach;
  const double z = delta * (u * u * u * std::sqrt(u) - 1) + 1, square = z * z;
  double y = 1 + (z - 1) * (2.0 / 7);
  for (int i = 0; i < 6; i += 1) {
    const double y3 = y * y * y, y6 = y3 * y3, next = y - (y6 * y - square) / (7 * y6);
    if (next == y) break;
    y = next;
  }
  return A0 * std::sqrt(5 * (y - 1)) / KT;
}

// Thrust, drag, motion.
static double between(const Row& xs, const Row& ys, double x) {
  double from = xs[0], low = ys[0];
  if (x <= from) return low;
  for (size_t k = 1; k < xs.size(); k += 1) {
    const double to = xs[k], high = ys[k], wide = to - from;
    if (x <= to) return low + (high - low) * (x - from) / (wide == 0 ? 1 : wide);
    from = to; low = high;
  }
  return low;
}
static inline double thrustAvailable(const Flight& n, double delta, double mach) {
  const double a = (-0.4327 * delta + 1.3855) * delta + 0.0472;
  const double z = ((0.9106 * delta - 1.7736) * delta + 1.8697) * delta;
  const double x = ((0.1377 * delta - 0.4374) * delta + 1.3003) * delta;
  return n.staticThrustN * (a - n.machLoss * z * mach + n.machGain * x * mach * mach);
}
static inline double spooled(const Flight& n, double fraction, double wish) {
  const double early = n.spoolBaseS + n.spoolSlopeS * (1 - fraction);
  const double middle = fraction + (DT / 2) * (wish - fraction) / early;
  const double a = DT / (2 * (n.spoolBaseS + n.spoolSlopeS * (1 - middle)));
  return (fraction * (1 - a) + 2 * a * wish) / (1 + a);
}
static inline double sine2(double deg) {
  const double x2 = deg * RAD * (deg * RAD);
  return x2 * (1 - x2 / 3 + 2 * x2 * x2 / 45);
}
static inline double drag(const Flight& n, const State& s, double leftDeg, double rightDeg, double q, double lift) {
  const double cl = lift / (q * n.areaM2), oswald = n.oswald + n.oswaldPerDeg * 0.5 * (leftDeg + rightDeg), left = sine2(leftDeg);
  const double cd = n.clean + n.leadingEdge * s.leadingEdge + n.flapSine2 * 0.5 * (left + (rightDeg == leftDeg ? left : sine2(rightDeg)))
    + n.gear * s.gear + (s.leftLive + s.rightLive < 2 ? n.engineOut : 0) + cl * cl * n.inversePiAspect / oswald;
  return cd * q * n.areaM2;
}
static void holdSpeed(State& s, const Fixed& f, double dragN, double available) {
  const double live = s.leftLive + s.rightLive;
  if (s.speedHold == 0 || live == 0) return;
  const double pull = clamp((s.selectedKt - s.casKt) * (0.12 * KT), -0.6, 0.6);
  const double need = dragN + f.flight.weightN * s.pathSin + f.flight.massKg * pull;
  const double wish = between(f.leverFraction, f.leverTla, need / (live * available));
  if (s.leftLive == 1) s.leftTlaDeg += clamp(wish - s.leftTlaDeg, -0.1, 0.1);
  if (s.rightLive == 1) s.rightTlaDeg += clamp(wish - s.rightTlaDeg, -0.1, 0.1);
}
static double stepMotion(State& s, const Fixed& f, double leftMid, double rightMid) {
  const Flight& n = f.flight;
  const double lift = n.weightN * std::sqrt(1 - s.pathSin * s.pathSin);
  double delta = pressureRatio(s.heightM), theta = temperatureRatio(s.heightM), sound = soundOf(theta), rho = RHO0 * delta / theta;
  const double available = thrustAvailable(n, delta, s.speedMps / sound);
  const double dragNow = drag(n, s, s.leftDeg, s.rightDeg, 0.5 * rho * s.speedMps * s.speedMps, lift);
  holdSpeed(s, f, dragNow, available);
  const double left = spooled(n, s.leftThrust, s.leftLive == 1 ? between(f.leverTla, f.leverFraction, s.leftTlaDeg) : 0);
  const bool even = s.leftThrust == s.rightThrust && s.leftTlaDeg == s.rightTlaDeg && s.leftLive == s.rightLive;
  const double right = even ? left : spooled(n, s.rightThrust, s.rightLive == 1 ? between(f.leverTla, f.leverFraction, s.rightTlaDeg) : 0);
  const double thrustNow = available * (s.leftThrust + s.rightThrust);
  if (s.goAround == 1) {
    const double wish = clamp((thrustNow - dragNow) / n.weightN + 0.01 * (s.casKt - s.selectedKt), 0, 0.25);
    s.pathSin += clamp(wish - s.pathSin, -0.0004, 0.0004);
  }
  const double pull = -n.weightN * s.pathSin;
  const double speedMid = s.speedMps + (DT / 2) * (thrustNow - dragNow + pull) / n.massKg;
  const double heightMid = s.heightM + (DT / 2) * s.speedMps * s.pathSin;
  if (heightMid != s.heightM) { delta = pressureRatio(heightMid); theta = temperatureRatio(heightMid); sound = soundOf(theta); rho = RHO0 * delta / theta; }
  const double q = 0.5 * rho * speedMid * speedMid;
  const double dragMid = drag(n, s, leftMid, rightMid, q, lift);
  const double thrustMid = thrustAvailable(n, delta, speedMid / sound) * 0.5 * ((s.leftThrust + left) + (s.rightThrust + right));
  s.speedMps += DT * (thrustMid - dragMid + pull) / n.massKg;
  if (s.speedMps < 20) s.speedMps = 20;
  const bool climbsTo = s.heightM < s.levelAtM;
  s.heightM += DT * speedMid * s.pathSin;
  s.distanceM += DT * speedMid;
  s.fuelKg += DT * (thrustMid * n.fuelKgPerNs + n.fuelBaseKgPerS * (s.leftLive + s.rightLive));
  s.leftThrust = left; s.rightThrust = right;
  if (s.pathSin < 0 && s.heightM <= s.levelAtM) s.pathSin = 0;
  if (s.goAround == 1 && climbsTo && s.heightM >= s.levelAtM) s.goAround = s.pathSin = 0;
  if (s.heightM != heightMid) { delta = pressureRatio(s.heightM); sound = soundOf(temperatureRatio(s.heightM)); }
  s.casKt = casOfMach(s.speedMps / sound, delta);
  return q;
}
