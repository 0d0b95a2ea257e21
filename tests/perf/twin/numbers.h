// What a run of the twin is made of, and the few functions that all of it uses.
#pragma once
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>
#include "names.h" // made by twin.mjs: State, Drive, Flight, Horn and Task as structs of doubles, in the order of the bits

using Row = std::vector<double>;
struct Due { double tick, what, side, a, b, c; };
struct Fixed {
  Drive drive; Flight flight; Horn horn; Task task;
  Row leverTla, leverFraction, clFlap, clMax, gustTicks, gusts, leftWander, rightWander, settings;
  std::vector<Due> faults, acts;
};
static const double DT = 0.01, PI = 3.141592653589793, RAD = PI / 180, KT = 1852.0 / 3600, FT = 0.3048, G0 = 9.80665;
static const double RHO0 = 1.225, T0 = 288.15, LAPSE = 0.0065, A0 = 340.293988026089, GAS = 287.05287;
static inline double clamp(double x, double low, double high) { return x < low ? low : x > high ? high : x; }
static inline double least(double a, double b) { return a < b ? a : b; }
static inline double most(double a, double b) { return a > b ? a : b; }

static double sine(double x) {
  static const double SIN[] = { -8.22063524662433e-18, 2.8114572543455206e-15, -7.647163731819816e-13, 1.6059043836821613e-10,
    -2.505210838544172e-8, 2.7557319223985893e-6, -1.984126984126984e-4, 8.333333333333333e-3, -0.16666666666666666, 1 };
  static const double COS[] = { 4.110317623312165e-19, -1.5619206968586225e-16, 4.779477332387385e-14, -1.1470745597729725e-11,
    2.08767569878681e-9, -2.755731922398589e-7, 2.48015873015873e-5, -1.388888888888889e-3, 4.1666666666666664e-2, -0.5, 1 };
  const double n = std::floor(x * 0.6366197723675814 + 0.5);
  const double r = x - n * 1.5707963267341256 - n * 6.077100506303966e-11 - n * 2.0222662487959506e-21;
  const double quarter = n - 4 * std::floor(n / 4), r2 = r * r;
  double sum = 0;
  if (quarter == 0 || quarter == 2) { for (double term : SIN) sum = sum * r2 + term; sum = r * sum; }
  else for (double term : COS) sum = sum * r2 + term;
  return quarter < 2 ? sum : -sum;
}
