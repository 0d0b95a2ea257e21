// Switchgear, motor, sides, heat: sim/drive/.
#pragma once
#include "numbers.h"

static void stepContactor(State& s, const Drive& n) {
  double wish = s.armed == 1 ? s.drive : 0;
  if (s.drive == 0 && s.contactor == 0) s.limiterTripped = 0;
  if (s.contactorStuck == 1 && s.armed == 1 && s.contactor != 0 && wish == 0) wish = s.contactor;
  if (s.cutOutOpen == 1) wish = 0;
  if (wish == s.contactor) { s.contactorTicks = 0; return; }
  const bool opening = s.contactor != 0;
  if (!opening && s.rateDegPerS != 0 && (s.rateDegPerS > 0) != (wish > 0)) { s.contactorTicks = 0; return; }
  if (s.contactorTicks < (opening ? n.dropOutTicks : n.pickUpTicks)) { s.contactorTicks += 1; return; }
  s.contactor = opening ? 0 : wish;
  s.contactorTicks = 0;
}
static inline double sideLoad(const Drive& n, double q, double way, double deg, double cut) {
  if (cut == 1) return 0;
  const double load = n.loadPerPa * q * (n.hinge + n.hingePerDeg * deg);
  return way > 0 ? load : n.noBackFactor * load;
}
static void stepTravel(State& s, const Drive& n, double q, double leftFollow, double rightFollow) {
  const double way = s.contactor != 0 ? s.contactor : s.rateDegPerS > 0 ? 1 : s.rateDegPerS < 0 ? -1 : 0;
  if (way == 0) { s.motorNm = 0; return; }
  const double half = s.rateDegPerS * (DT / 2);
  const double loadNm = n.frictionNm + (sideLoad(n, q, way, s.leftDeg + leftFollow * half, s.leftCut) + sideLoad(n, q, way, s.rightDeg + rightFollow * half, s.rightCut));
  const double rate = std::fabs(s.rateDegPerS);
  double next, moved;
  if (s.contactor != 0 && s.driveDead == 0 && s.limiterTripped == 1) { s.motorNm = n.limiterNm; next = moved = 0; }
  else if (s.contactor != 0 && s.driveDead == 0) {
    const double step = n.rateStep / s.driveFactor;
    next = most(0, (rate * (1 - step) + DT * (n.stallTorqueNm - loadNm) / n.inertia) / (1 + step));
    moved = (rate + next) * (DT / 2);
    s.motorNm = n.stallTorqueNm * (1 - (rate + next) * 0.5 * n.inverseNoLoadRate / s.driveFactor);
    if (loadNm >= n.limiterNm) s.limiterTripped = 1;
  } else {
    const double slowing = (n.brakeNm + loadNm) / n.inertia;
    next = rate - DT * slowing;
    s.motorNm = 0;
    moved = next > 0 ? (rate + next) * (DT / 2) : rate * rate / (2 * slowing);
    if (next < 0) next = 0;
  }
  double by = way * moved;
  s.rateDegPerS = s.limiterTripped == 1 || next == 0 ? 0 : way * next;
  const double to = s.driveDeg + by;
  if (to >= n.stopDeg || to <= 0) {
    const double stopped = clamp(to, 0, n.stopDeg);
    by = stopped - s.driveDeg;
    s.driveDeg = stopped; s.rateDegPerS = 0;
    if (s.contactor != 0) s.limiterTripped = 1;
  } else s.driveDeg = to;
  s.leftDeg = clamp(s.leftDeg + leftFollow * by, 0, n.stopDeg);
  s.rightDeg = clamp(s.rightDeg + rightFollow * by, 0, n.stopDeg);
}
static void stepNormal(State& s, const Drive& n) {
  if (s.mainDrive == 0 || s.armed == 1 || s.contactor != 0 || s.rateDegPerS != 0) return;
  const double step = n.normalRateDegPerS * DT, by = clamp(s.flapLeverDeg - s.driveDeg, -step, step);
  if (by == 0) return;
  s.driveDeg += by;
  if (s.leftCut == 0) s.leftDeg = clamp(s.leftDeg + s.leftRatio * by, 0, n.stopDeg);
  if (s.rightCut == 0) s.rightDeg = clamp(s.rightDeg + s.rightRatio * by, 0, n.stopDeg);
}
static void stepHeat(State& s, const Drive& n) {
  if (s.contactor != 0 && s.driveDead == 0) {
    const double current = n.noLoadCurrent + s.motorNm * n.inverseStall, end = n.heatGain * current * current;
    s.motorHeat = end + (s.motorHeat - end) * n.heatKeptOn;
  } else s.motorHeat *= n.heatKeptOff;
  if (s.motorHeat >= n.cutOut) s.cutOutOpen = 1;
  else if (s.motorHeat < n.reset) s.cutOutOpen = 0;
}
