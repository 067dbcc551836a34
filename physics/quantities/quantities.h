// Physical quantities as types: a length cannot be added to a time, and a temperature on a scale is not
// a difference of temperatures. A quantity holds one double in SI units; values come in through
// factories named after the unit and go out through functions named "in_" + unit. Kernels may use plain
// doubles inside; public functions speak these types. Values, no state. Checked:
// quantities_unit_test.cpp, must_not_compile/.
#pragma once

#include <compare>

namespace lastegg {

/// A quantity whose SI unit is m^L s^T kg^M K^K. Sums need the same exponents; products and quotients
/// get theirs.
template <int L, int T, int M, int K>
class Quantity {
 public:
  constexpr Quantity() = default;
  static constexpr Quantity from_si(double value) { return Quantity(value); }
  constexpr double si() const { return value_; }

  friend constexpr auto operator<=>(Quantity, Quantity) = default;
  friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value_ + b.value_); }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value_ - b.value_); }
  friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.value_); }
  friend constexpr Quantity operator*(Quantity a, double b) { return Quantity(a.value_ * b); }
  friend constexpr Quantity operator*(double a, Quantity b) { return Quantity(a * b.value_); }
  friend constexpr Quantity operator/(Quantity a, double b) { return Quantity(a.value_ / b); }
  /// The ratio of two like quantities is a plain number.
  friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }
  constexpr Quantity& operator+=(Quantity b) { return *this = *this + b; }
  constexpr Quantity& operator-=(Quantity b) { return *this = *this - b; }

 private:
  explicit constexpr Quantity(double value) : value_(value) {}
  double value_ = 0.0;
};

template <int L, int T, int M, int K, int L2, int T2, int M2, int K2>
  requires(L + L2 != 0 || T + T2 != 0 || M + M2 != 0 || K + K2 != 0)
constexpr auto operator*(Quantity<L, T, M, K> a, Quantity<L2, T2, M2, K2> b) {
  return Quantity<L + L2, T + T2, M + M2, K + K2>::from_si(a.si() * b.si());
}

/// A product whose units cancel is a plain number.
template <int L, int T, int M, int K>
constexpr double operator*(Quantity<L, T, M, K> a, Quantity<-L, -T, -M, -K> b) {
  return a.si() * b.si();
}

template <int L, int T, int M, int K, int L2, int T2, int M2, int K2>
  requires(L != L2 || T != T2 || M != M2 || K != K2)
constexpr auto operator/(Quantity<L, T, M, K> a, Quantity<L2, T2, M2, K2> b) {
  return Quantity<L - L2, T - T2, M - M2, K - K2>::from_si(a.si() / b.si());
}

template <int L, int T, int M, int K>
constexpr auto operator/(double a, Quantity<L, T, M, K> b) {
  return Quantity<-L, -T, -M, -K>::from_si(a / b.si());
}

using Length = Quantity<1, 0, 0, 0>;
using Area = Quantity<2, 0, 0, 0>;
using Volume = Quantity<3, 0, 0, 0>;
using Duration = Quantity<0, 1, 0, 0>;
using Speed = Quantity<1, -1, 0, 0>;
using Mass = Quantity<0, 0, 1, 0>;
using MassFlow = Quantity<0, -1, 1, 0>;
using Density = Quantity<-3, 0, 1, 0>;
using MassPerArea = Quantity<-2, 0, 1, 0>;
using TemperatureDifference = Quantity<0, 0, 0, 1>;
using HeatingRate = Quantity<0, -1, 0, 1>;
using Pressure = Quantity<-1, -2, 1, 0>;
using Energy = Quantity<2, -2, 1, 0>;
using Power = Quantity<2, -3, 1, 0>;
using EnergyPerArea = Quantity<0, -2, 1, 0>;
using HeatFlux = Quantity<0, -3, 1, 0>;
using HeatTransferCoefficient = Quantity<0, -3, 1, -1>;
using ThermalConductivity = Quantity<1, -3, 1, -1>;
using ThermalConductance = Quantity<2, -3, 1, -1>;
using ThermalDiffusivity = Quantity<2, -1, 0, 0>;
using HeatCapacity = Quantity<2, -2, 1, -1>;
using VolumetricHeatCapacity = Quantity<-1, -2, 1, -1>;
using SpecificHeat = Quantity<2, -2, 0, -1>;
using SpecificEnergy = Quantity<2, -2, 0, 0>;
using SpecificVolume = Quantity<3, 0, -1, 0>;

/// A temperature on the thermodynamic scale. Temperatures have no sum and no multiple; their difference
/// is another type.
class Temperature {
 public:
  static constexpr Temperature from_kelvin(double value) { return Temperature(value); }
  constexpr double kelvin() const { return kelvin_; }

  friend constexpr auto operator<=>(Temperature, Temperature) = default;
  friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
    return TemperatureDifference::from_si(a.kelvin_ - b.kelvin_);
  }
  friend constexpr Temperature operator+(Temperature a, TemperatureDifference b) {
    return Temperature(a.kelvin_ + b.si());
  }
  friend constexpr Temperature operator+(TemperatureDifference a, Temperature b) { return b + a; }
  friend constexpr Temperature operator-(Temperature a, TemperatureDifference b) {
    return Temperature(a.kelvin_ - b.si());
  }

 private:
  explicit constexpr Temperature(double kelvin) : kelvin_(kelvin) {}
  double kelvin_;
};

static_assert(sizeof(Temperature) == sizeof(double) && sizeof(Length) == sizeof(double));

// Factories. Inch, foot, pound and Fahrenheit: exact definitions, NIST SP 811 appendix B.
constexpr Temperature kelvin(double value) {
  return Temperature::from_kelvin(value);
}
constexpr Temperature celsius(double value) {
  return Temperature::from_kelvin(value + 273.15);
}
constexpr Temperature fahrenheit(double value) {
  return celsius((value - 32.0) * 5.0 / 9.0);
}
constexpr TemperatureDifference kelvin_difference(double value) {
  return TemperatureDifference::from_si(value);
}
constexpr TemperatureDifference fahrenheit_difference(double value) {
  return TemperatureDifference::from_si(value * 5.0 / 9.0);
}
constexpr Length metres(double value) {
  return Length::from_si(value);
}
constexpr Length millimetres(double value) {
  return Length::from_si(value / 1000.0);
}
constexpr Length inches(double value) {
  return Length::from_si(value * 254.0 / 10000.0);
}
constexpr Length feet(double value) {
  return Length::from_si(value * 3048.0 / 10000.0);
}
constexpr Duration seconds(double value) {
  return Duration::from_si(value);
}
constexpr Duration minutes(double value) {
  return Duration::from_si(value * 60.0);
}
constexpr Duration hours(double value) {
  return Duration::from_si(value * 3600.0);
}
constexpr Duration days(double value) {
  return Duration::from_si(value * 86400.0);
}
constexpr Speed metres_per_second(double value) {
  return Speed::from_si(value);
}
constexpr Speed millimetres_per_second(double value) {
  return Speed::from_si(value / 1000.0);
}
constexpr Speed inches_per_second(double value) {
  return Speed::from_si(value * 254.0 / 10000.0);
}
constexpr Pressure pascals(double value) {
  return Pressure::from_si(value);
}
constexpr Pressure kilopascals(double value) {
  return Pressure::from_si(value * 1000.0);
}
constexpr Mass kilograms(double value) {
  return Mass::from_si(value);
}
constexpr Mass grams(double value) {
  return Mass::from_si(value / 1000.0);
}
constexpr MassFlow grams_per_second(double value) {
  return MassFlow::from_si(value / 1000.0);
}
constexpr MassPerArea grams_per_m2(double value) {
  return MassPerArea::from_si(value / 1000.0);
}
constexpr Density kilograms_per_m3(double value) {
  return Density::from_si(value);
}
constexpr Power watts(double value) {
  return Power::from_si(value);
}
constexpr HeatFlux watts_per_m2(double value) {
  return HeatFlux::from_si(value);
}
constexpr EnergyPerArea joules_per_m2(double value) {
  return EnergyPerArea::from_si(value);
}
constexpr HeatTransferCoefficient watts_per_m2_kelvin(double value) {
  return HeatTransferCoefficient::from_si(value);
}
constexpr ThermalConductivity watts_per_metre_kelvin(double value) {
  return ThermalConductivity::from_si(value);
}
constexpr VolumetricHeatCapacity joules_per_m3_kelvin(double value) {
  return VolumetricHeatCapacity::from_si(value);
}
constexpr SpecificHeat joules_per_kilogram_kelvin(double value) {
  return SpecificHeat::from_si(value);
}
constexpr SpecificEnergy joules_per_kilogram(double value) {
  return SpecificEnergy::from_si(value);
}
constexpr SpecificVolume m3_per_kilogram(double value) {
  return SpecificVolume::from_si(value);
}

// Reading back.
constexpr double in_kelvin(Temperature value) {
  return value.kelvin();
}
constexpr double in_celsius(Temperature value) {
  return value.kelvin() - 273.15;
}
constexpr double in_fahrenheit(Temperature value) {
  return in_celsius(value) * 9.0 / 5.0 + 32.0;
}
constexpr double in_kelvin(TemperatureDifference value) {
  return value.si();
}
constexpr double in_fahrenheit_difference(TemperatureDifference value) {
  return value.si() * 9.0 / 5.0;
}
constexpr double in_metres(Length value) {
  return value.si();
}
constexpr double in_millimetres(Length value) {
  return value.si() * 1000.0;
}
constexpr double in_inches(Length value) {
  return value.si() * 10000.0 / 254.0;
}
constexpr double in_seconds(Duration value) {
  return value.si();
}
constexpr double in_minutes(Duration value) {
  return value.si() / 60.0;
}
constexpr double in_hours(Duration value) {
  return value.si() / 3600.0;
}
constexpr double in_days(Duration value) {
  return value.si() / 86400.0;
}
constexpr double in_metres_per_second(Speed value) {
  return value.si();
}
constexpr double in_millimetres_per_second(Speed value) {
  return value.si() * 1000.0;
}
constexpr double in_inches_per_second(Speed value) {
  return value.si() * 10000.0 / 254.0;
}
constexpr double in_pascals(Pressure value) {
  return value.si();
}
constexpr double in_kilopascals(Pressure value) {
  return value.si() / 1000.0;
}
constexpr double in_kilograms(Mass value) {
  return value.si();
}
constexpr double in_grams_per_second(MassFlow value) {
  return value.si() * 1000.0;
}
constexpr double in_grams_per_m2(MassPerArea value) {
  return value.si() * 1000.0;
}
constexpr double in_kilograms_per_m3(Density value) {
  return value.si();
}
constexpr double in_watts(Power value) {
  return value.si();
}
constexpr double in_watts_per_m2(HeatFlux value) {
  return value.si();
}
constexpr double in_joules_per_m2(EnergyPerArea value) {
  return value.si();
}
constexpr double in_watts_per_m2_kelvin(HeatTransferCoefficient value) {
  return value.si();
}
constexpr double in_watts_per_metre_kelvin(ThermalConductivity value) {
  return value.si();
}
constexpr double in_joules_per_m3_kelvin(VolumetricHeatCapacity value) {
  return value.si();
}
constexpr double in_joules_per_kilogram_kelvin(SpecificHeat value) {
  return value.si();
}
constexpr double in_joules_per_kilogram(SpecificEnergy value) {
  return value.si();
}
constexpr double in_m3_per_kilogram(SpecificVolume value) {
  return value.si();
}

}  // namespace lastegg
