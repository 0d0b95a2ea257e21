// A second hand at the tick: all of sim/world.ts `step`, in C++, to the same bits. It exists to be timed against, and to be
// equal: tests/perf/twin.mjs compares the hash of every run before it times one.
//
// What it leaves out, and the runs it is given therefore never hold: triggers other than `atS`, events, desks, ends other than
// the run's time (mode `whole`), jams, blow-back, mended faults, and acts other than those in `act` below. Everything else of a tick
// is here: switchgear, motor, sides, normal drive, leading edge, heat, air, thrust, speed hold, climb, roll and autopilot with
// its noise, heading, gear, pointers, onset, horn, releases, the end. Reads no decimal number: every double comes in as its bits.
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include "drive.h"
#include "motion.h"
#include "roll.h"

// Pointers and what is noted of them.
static double following(const Row& wander, double perDeg, double deg, double bias, double mismatch) {
  const double x = deg * perDeg, k = least(double(wander.size()) - 2, most(0, std::floor(x))), low = wander[size_t(k)];
  return deg + bias + (mismatch + (low + (wander[size_t(k) + 1] - low) * (x - k)));
}
static double leftAt(const Fixed& f, double deg, double bias) { return following(f.leftWander, f.task.perDeg, deg, bias, f.task.leftMismatchDeg); }
static double rightAt(const Fixed& f, double deg, double bias) { return following(f.rightWander, f.task.perDeg, deg, bias, f.task.rightMismatchDeg); }
static bool splits(const State& s) {
  return s.leftCut + s.rightCut + s.leftJam + s.rightJam + s.leftSlip + s.rightSlip + s.leftStuck + s.rightStuck > 0
    || s.leftRatio != 1 || s.rightRatio != 1 || s.leftBiasDeg != 0 || s.rightBiasDeg != 0 || s.leftDriftDegPerS != 0 || s.rightDriftDegPerS != 0;
}
static double hornNow(const State& s, const Fixed& f) {
  const Horn& t = f.horn;
  if (s.gear >= 1) return 0;
  const double flap = most(s.leftDeg, s.rightDeg);
  if (flap > t.landingBandDeg) return 2;
  const double tla = s.leftLive == 0 ? s.rightTlaDeg : s.rightLive == 0 ? s.leftTlaDeg : least(s.leftTlaDeg, s.rightTlaDeg);
  if (!(tla < (s.leftLive + s.rightLive >= 2 ? t.bothLiveTlaDeg : t.oneLiveTlaDeg))) return 0;
  return flap > t.takeOffBandDeg ? 2 : (s.heightM - f.task.groundM) / FT < t.heightFt ? 1 : 0;
}
static void noteRelease(State& s, const Fixed& f) {
  if (s.ranSincePress == 0 || (s.pressLeadingEdge == 0 && s.leadingEdge < s.leadingEdgeStop)) return;
  if (s.settingNext < f.settings.size() && std::fabs(s.driveDeg - f.settings[size_t(s.settingNext)]) <= 0.5) {
    s.settingNext += 1;
    if (s.settingNext < f.settings.size()) return;
  }
  if (s.releaseTick < 0 || (f.task.recognition == 0 && s.splitCallTick < 0)) s.releaseTick = s.tick;
}

/** A fault comes into force. The numbers of `what` are those of KINDS in twin.mjs. */
static void fault(State& s, const Due& due, double place) {
  const bool left = due.side == 0;
  switch (int(due.what)) {
    case 0: (left ? s.leftCut : s.rightCut) = 1; return;
    case 1: (left ? s.leftRatio : s.rightRatio) = due.a; return;
    case 2: (left ? s.leftSlip : s.rightSlip) = place + 1; (left ? s.leftSlipTicks : s.rightSlipTicks) = 0; return;
    case 3: (left ? s.leftBiasDeg : s.rightBiasDeg) += due.a; return;
    case 4: s.driveFactor = due.a; return;
  }
}
/** An act of the hand; the numbers are those of ACTS in twin.mjs. */
static void act(State& s, const Fixed& f, const Due& due) {
  switch (int(due.what)) {
    case 0: s.guardOpen = 1; return;
    case 1: if (s.guardOpen == 1) s.armed = 1; return;
    case 2: if (s.guardOpen == 1) s.drive = due.a; return;
    case 3: if (s.drive != 0 && (s.drive > 0 ? f.task.extendSprung : f.task.retractSprung) == 1) s.drive = 0; return;
    case 4: s.flapLeverDeg = due.a; return;
    case 5: s.speedHold = 0; s.leftTlaDeg = s.rightTlaDeg = due.a; return;
    case 6: s.selectedKt = due.a; return;
    case 7: s.gearLever = due.a; return;
    case 8: s.autopilot = 0; s.handControl = due.a; return;
    case 9: if (s.splitCallTick < 0) s.splitCallTick = s.tick; return;
  }
}
static inline double ratioNow(const Fixed& f, double ratio, double slip, double slipTicks) {
  if (slip == 0) return ratio;
  const Due& due = f.faults[size_t(slip) - 1];
  return double(int64_t(slipTicks) % int64_t(due.b)) < due.c ? due.a : ratio;
}

static size_t step(const Fixed& f, State& s, size_t next) {
  const bool wasHeld = s.armed == 1 && s.drive != 0;
  const double drive0 = s.driveDeg, left0 = s.leftDeg, right0 = s.rightDeg, leftBias0 = s.leftBiasDeg, rightBias0 = s.rightBiasDeg, speed0 = s.speedMps;
  if (s.agendaNext < f.faults.size() && f.faults[size_t(s.agendaNext)].tick <= s.tick) {
    for (size_t k = 0; k < f.faults.size(); k += 1) if (f.faults[k].tick == s.tick) fault(s, f.faults[k], double(k));
    while (s.agendaNext < f.faults.size() && f.faults[size_t(s.agendaNext)].tick <= s.tick) s.agendaNext += 1;
  }
  while (next < f.acts.size() && f.acts[next].tick == s.tick) act(s, f, f.acts[next++]);
  const bool held = s.armed == 1 && s.drive != 0;
  if (held && !wasHeld) {
    s.pressTick = s.tick; s.pressLeadingEdge = s.leadingEdge; s.ranSincePress = 0;
    if (s.releaseTick >= 0 && s.repressTick < 0) s.repressTick = s.tick;
  }
  if (!held && wasHeld) noteRelease(s, f);

  stepContactor(s, f.drive);
  if (held) { s.heldTicks += 1; if (s.contactor != 0) s.ranSincePress = 1; }
  const double leftFollow = s.leftCut == 1 ? 0 : ratioNow(f, s.leftRatio, s.leftSlip, s.leftSlipTicks);
  const double rightFollow = s.rightCut == 1 ? 0 : ratioNow(f, s.rightRatio, s.rightSlip, s.rightSlipTicks);
  const double half = s.rateDegPerS * (DT / 2);
  const double q = stepMotion(s, f, s.leftDeg + leftFollow * half, s.rightDeg + rightFollow * half);
  if (s.leftSlip != 0) s.leftSlipTicks += 1;
  if (s.rightSlip != 0) s.rightSlipTicks += 1;
  stepTravel(s, f.drive, q, leftFollow, rightFollow);
  stepNormal(s, f.drive);
  if (s.contactor > 0 && s.driveDead == 0) s.leadingEdgeGoing = 1;
  if (s.leadingEdgeGoing != 0 && s.leadingEdge < s.leadingEdgeStop) s.leadingEdge = least(s.leadingEdgeStop, s.leadingEdge + f.drive.leadingEdgePerTick);
  stepHeat(s, f.drive);
  stepRoll(s, f, q, 0.5 * (speed0 + s.speedMps), 0.5 * (left0 + s.leftDeg), 0.5 * (right0 + s.rightDeg), gustNow(s, f));
  stepHeading(s);
  s.gear = clamp(s.gear + (s.gearLever == 1 ? f.task.gearPerTick : -f.task.gearPerTick), 0, 1);

  const bool moved = s.driveDeg != drive0;
  if (moved) { s.leftBiasDeg += s.leftDriftDegPerS * DT; s.rightBiasDeg += s.rightDriftDegPerS * DT; }
  if (moved && s.onsetTick < 0 && splits(s)) {
    const double leftBy = s.leftDeg + s.leftBiasDeg - (left0 + leftBias0), rightBy = s.rightDeg + s.rightBiasDeg - (right0 + rightBias0);
    const double jump = leftBy == rightBy ? s.leftBiasDeg - s.rightBiasDeg : 0, change = leftBy - rightBy + jump;
    if (std::fabs(change) >= 1e-12) {
      s.onsetTick = s.tick;
      s.onsetBaseDeg = leftAt(f, left0, leftBias0) - rightAt(f, right0, rightBias0) - jump;
      s.onsetSign = change > 0 ? 1 : -1;
    }
  }
  const double horn = hornNow(s, f);
  if (horn != 1) s.hornSilenced = 0;
  s.horn = s.hornSilenced == 1 ? 0 : horn;
  double used = 0;
  if (s.leftDeg != s.rightDeg) {
    const double rho = RHO0 * pressureRatio(s.heightM) / temperatureRatio(s.heightM);
    used = 100 * std::fabs(splitMoment(f.flight, s.leftDeg, s.rightDeg)) / controlMoment(f, 0.5 * rho * s.speedMps * s.speedMps, least(s.leftDeg, s.rightDeg), s.leadingEdge);
  }
  const bool still = s.settingNext >= f.settings.size() && s.contactor == 0 && s.rateDegPerS == 0;
  s.stillTicks = still ? s.stillTicks + 1 : 0;
  s.lostTicks = used >= 100 ? s.lostTicks + 1 : 0;
  if (s.endTick < 0 && s.tick + 1 >= f.task.limitTicks) { s.endTick = s.tick + 1; s.endWhy = 6; }
  s.tick += 1;
  return next;
}

/** The hash of sim/hash.ts over the states of every 100th tick and the last, as `run` takes it. */
static uint32_t mix(uint32_t lane, uint32_t word) {
  uint32_t k = word * 0xcc9e2d51u;
  k = ((k << 15) | (k >> 17)) * 0x1b873593u;
  const uint32_t h = lane ^ k;
  return ((h << 13) | (h >> 19)) * 5u + 0xe6546b64u;
}
static uint32_t finish(uint32_t h) {
  h = (h ^ (h >> 16)) * 0x85ebca6bu;
  h = (h ^ (h >> 13)) * 0xc2b2ae35u;
  return h ^ (h >> 16);
}
struct Hash {
  uint32_t first = 0x9747b28cu, second = 0x2f4fb500u;
  void add(const State& s) {
    const double* values = &s.tick;
    for (size_t k = 0; k < sizeof(State) / sizeof(double); k += 1) {
      const double value = values[k] + 0;
      uint64_t bits;
      std::memcpy(&bits, &value, 8);
      const uint32_t high = uint32_t(bits >> 32), low = uint32_t(bits);
      first = mix(mix(first, high), low);
      second = mix(mix(second, low), high ^ 0x5bd1e995u);
    }
  }
};

static double number(std::FILE* file) {
  uint64_t bits;
  if (std::fscanf(file, "%lx", &bits) != 1) { std::fprintf(stderr, "the file of numbers is short\n"); std::exit(2); }
  double value;
  std::memcpy(&value, &bits, 8);
  return value;
}
template <class T> static void fill(std::FILE* file, T& into) {
  double* to = reinterpret_cast<double*>(&into);
  for (size_t k = 0; k < sizeof(T) / sizeof(double); k += 1) to[k] = number(file);
}
static Row row(std::FILE* file) {
  Row all(size_t(number(file)));
  for (double& one : all) one = number(file);
  return all;
}
static std::vector<Due> dues(std::FILE* file) {
  std::vector<Due> all(size_t(number(file)));
  for (Due& one : all) fill(file, one);
  return all;
}
static double processorNs() {
  timespec now;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return double(now.tv_sec) * 1e9 + double(now.tv_nsec);
}

/** twin <file of numbers> <repeats>: prints the hash of the run, and the least time of a tick over the repeats, ns. */
int main(int count, char** words) {
  if (count < 3) return 2;
  std::FILE* file = std::fopen(words[1], "r");
  if (file == nullptr) return 2;
  Fixed f;
  State start;
  fill(file, start); fill(file, f.drive); fill(file, f.flight); fill(file, f.horn); fill(file, f.task);
  for (Row* one : { &f.leverTla, &f.leverFraction, &f.clFlap, &f.clMax, &f.gustTicks, &f.gusts, &f.leftWander, &f.rightWander, &f.settings }) *one = row(file);
  f.faults = dues(file);
  f.acts = dues(file);
  std::fclose(file);

  Hash hash;
  State s = start;
  size_t next = 0;
  while (s.tick < f.task.limitTicks && s.endTick < 0) {
    if (std::fmod(s.tick, 100) == 0) hash.add(s);
    next = step(f, s, next);
  }
  hash.add(s);
  double best = 1e300, sink = 0;
  for (int k = std::atoi(words[2]); k > 0; k -= 1) {
    State timed = start;
    size_t at = 0;
    const double from = processorNs();
    for (int64_t tick = 0; tick < int64_t(f.task.limitTicks); tick += 1) at = step(f, timed, at);
    best = least(best, (processorNs() - from) / f.task.limitTicks);
    sink += timed.speedMps;
  }
  std::printf("{\"hash\":\"%08x%08x\",\"ns\":%.3f,\"sink\":%g}\n", finish(hash.first), finish(hash.second), best, sink);
}
