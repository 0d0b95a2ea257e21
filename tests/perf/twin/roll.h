// Roll with its autopilot and noise, heading: sim/flight/roll.ts, heading.ts.
#pragma once
#include "numbers.h"

static inline double effective(const Flight& n, double deg) { return n.flapEffect * deg * (n.flapEffectBase + n.flapEffectPerDeg2 * deg * deg); }
static inline double splitMoment(const Flight& n, double leftDeg, double rightDeg) {
  return 0.5 * n.liftingSurface * n.clFlap * (effective(n, leftDeg) - effective(n, rightDeg)) * RAD;
}
static double clMaxAt(const Fixed& f, double deg, double leadingEdge) {
  double from = f.clFlap[0], low = f.clMax[0];
  if (deg < f.clFlap[1]) {
    const double up = leadingEdge >= 1 ? f.flight.clMaxFlapUpLeadingEdgeOut : low;
    return up + (f.clMax[1] - up) * most(0, deg) / f.clFlap[1];
  }
  for (size_t k = 1; k < f.clFlap.size(); k += 1) {
    const double to = f.clFlap[k], high = f.clMax[k];
    if (deg <= to) return low + (high - low) * (deg - from) / (to - from);
    from = to; low = high;
  }
  return low;
}
static double controlMoment(const Fixed& f, double q, double lowerDeg, double leadingEdge) {
  const Flight& n = f.flight;
  const double part = n.weightN / (q * n.areaM2) / clMaxAt(f, lowerDeg, leadingEdge);
  const double fade = part <= n.stallKnee ? 1 : most(n.stallControl, 1 - (1 - n.stallControl) * (part - n.stallKnee) / (1 - n.stallKnee));
  return n.control * std::max(0.01, 1 - q / n.reversalPa) * fade;
}
static void stepRoll(State& s, const Fixed& f, double q, double speed, double leftDeg, double rightDeg, double disturbance) {
  const Flight& n = f.flight;
  const double step = n.controlRatePerS * DT;
  double wish = s.handControl;
  if (s.autopilot != 0) {
    const double bank = s.bankRad - s.turnRad, free = -(3 * bank + 2 * s.rollRate + s.controlSum);
    wish = clamp(free, -n.autopilotLimit, n.autopilotLimit);
    if (wish == free) s.controlSum += 0.6 * bank * DT;
    s.limitTicks = std::fabs(s.control) >= n.autopilotLimit ? s.limitTicks + 1 : 0;
    if (s.limitTicks >= n.autopilotOffTicks) s.autopilot = 0;
  }
  s.control += clamp(wish - s.control, -step, step);
  const double full = controlMoment(f, q, least(leftDeg, rightDeg), s.leadingEdge);
  const double gain = q * n.areaM2 * n.spanM * n.inverseRollInertia, damping = gain * n.liftingSurface * n.clDamping * n.spanM / (2 * speed);
  const double moment = gain * (splitMoment(n, leftDeg, rightDeg) + full * (s.control + disturbance));
  const double before = s.rollRate, half = damping * (DT / 2);
  s.rollRate = (before * (1 + half) + DT * moment) / (1 - half);
  s.bankRad += (before + s.rollRate) * (DT / 2);
}
static void stepHeading(State& s) {
  if (s.headingHold == 1) {
    const double wish = clamp(1.2 * (s.turnToRad - s.turnedRad), -(20 * RAD), 20 * RAD);
    s.turnRad += clamp(wish - s.turnRad, -(3 * RAD * DT), 3 * RAD * DT);
  }
  if (s.bankRad == 0) return;
  const double up = sine(s.bankRad);
  s.turnedRad += DT * G0 * up / (std::sqrt(most(0.01, 1 - up * up)) * s.speedMps);
}
static double gustNow(State& s, const Fixed& f) {
  while (s.gustKnot + 1 < f.gustTicks.size() && f.gustTicks[size_t(s.gustKnot) + 1] <= s.tick) s.gustKnot += 1;
  const size_t k = size_t(s.gustKnot);
  const bool last = k + 1 >= f.gustTicks.size();
  const double low = f.gusts[k], part = last ? 0 : (s.tick - f.gustTicks[k]) / (f.gustTicks[k + 1] - f.gustTicks[k]);
  return f.task.trim + low + ((last ? low : f.gusts[k + 1]) - low) * part;
}
