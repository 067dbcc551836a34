// Heat and water under steam by finite elements, in one or two dimensions: an implementation of its own of
// the equations of treatments/steam/README.md, to hold the engine against. It shares no code with the engine:
// deal.II elements with nodes at Gauss-Lobatto points, storage lumped at the nodes, BDF2 in time with a
// converged Newton and steps chosen by the change of temperature, saturation from IAPWS-IF97, direct sparse
// solves. The unknowns of a node are its temperature and its filling u = W / 2S. One thread.
#pragma once

#include <array>
#include <functional>
#include <string>
#include <vector>

namespace lastegg::elements {

struct Medium {
  double capacity = 0, conductivity = 0;
  bool permeable = false;
  double porosity = 0, tortuosity = 1, sorption = 0;
  double efficiency = 1;  ///< share of the vapour conductance: the cloth's phi, 1 in free gas
};

struct Steam {
  double head_metres = 0, pace = 0, dew_celsius = 0, film = 0, cap = 0, forced = 0;
  double skirt_metres = 0.02, skirt_factor = 0.25;
  double pressure = 101325, start_celsius = 20, start_activity = 0.5;
  double room_celsius = 20, room_film = 10, room_humidity = 0.5;
  double observe_seconds = 60;
};

/// A body on a grid of lines. In one dimension only z is used.
struct Body {
  std::vector<double> x, z;  ///< grid lines, z downwards from the head's plane
  std::vector<Medium> media;
  /// Medium of the cell with that centre; -1: outside of the body.
  std::function<int(double x, double z)> medium;
  /// Share of full exposure of a boundary face with that centre and outward normal (0: closed).
  std::function<double(double x, double z, double nx, double nz)> exposed;
  /// Area that a depth stands for, 1 for a plane.
  std::function<double(double z)> area = [](double) { return 1.0; };
  /// Depth at which forced gas leaves; only in one dimension.
  double forced_until = 0;
  std::vector<std::array<double, 2>> places;  ///< (x, z), at grid points
};

struct Found {
  double peak_celsius = 0;
  double log10_dose = 0;  ///< minutes at 48 C with z = 4 K, over 71.5
};

struct Outcome {
  std::vector<Found> places;
  int unknowns = 0, steps = 0;
};

struct Fineness {
  int degree = 2;
  double largest_change_kelvin = 0.6;  ///< of any node in a step
};

/// Marches a pass: skirt, head, skirt, room air.
Outcome solve_line(const Body& body, const Steam& steam, const Fineness& fineness);
Outcome solve_plane(const Body& body, const Steam& steam, const Fineness& fineness);

/// Grid lines between two ends, fine at both of them or at the first only.
std::vector<double> graded(double from, double until, int cells, double smallest, bool both_ends);
void append_lines(std::vector<double>& to, const std::vector<double>& more);

}  // namespace lastegg::elements
