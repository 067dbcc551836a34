// The dimensionless equations of IAPWS-IF97 for liquid (region 1), vapour (region 2) and their boundary
// (region 4). Internal to this room: no validity checks; water.h is the face. Pure functions of plain
// SI numbers.
#pragma once

namespace lastegg::if97 {

/// Specific gas constant of water in J/(kg K).
/// Source:  IAPWS R7-97(2012), equation 1.
inline constexpr double k_gas_constant = 461.526;

/// Properties in SI: m3/kg, J/kg, J/(kg K), J/(kg K), m/s.
struct Properties {
  double specific_volume, enthalpy, entropy, heat_capacity, sound_speed;
};

/// Region 1, IAPWS R7-97(2012) equation 7 with tables 2 and 3.
Properties liquid(double kelvin, double pascal);

/// Region 2, IAPWS R7-97(2012) equations 15 to 17 with tables 10, 11 and 12.
Properties vapour(double kelvin, double pascal);

/// Region 4, IAPWS R7-97(2012) equation 30.
double saturation_pascal(double kelvin);

/// Region 4, IAPWS R7-97(2012) equation 31.
double saturation_kelvin(double pascal);

/// Upper pressure of region 2 between 623.15 K and 863.15 K, IAPWS R7-97(2012) equation 5.
double vapour_limit_pascal(double kelvin);

}  // namespace lastegg::if97
