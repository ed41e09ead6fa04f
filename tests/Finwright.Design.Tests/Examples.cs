namespace Finwright.Design.Tests;

/// <summary>Designs of an invented sailor on a shallow, weedy estuary.</summary>
internal static class Examples
{
    /// <summary>The least that makes a design.</summary>
    public const string Small = """
        {
          "format": 2,
          "name": "Saltmarsh 24",
          "shape": {
            "outline": { "family": "steep-rake", "span_mm": 240, "root_chord_mm": 130 }
          }
        }
        """;

    /// <summary>Something in every group and every list.</summary>
    public const string Full = """
        // What stands here is invented.
        {
          "format": 2,
          "name": "Ebb tide, wide",
          "note": "Try more chord at the root.\nStrip as on the last one.",
          "brief": {
            "rider_mass_kg": 74.5, "sail_area_m2": 5.3, "side_force_n": 310, "draught_limit_mm": 300,
            "getting_going_speed_m_per_s": 4.5, "cruise_speed_m_per_s": 8, "top_speed_m_per_s": 12,
            "weed": "thick", "water": "brackish", "water_state": "ripples",
          },
          "shape": {
            "outline": { "family": "wide-delta", "span_mm": 210, "area_cm2": 290, "rake_degrees": 36 },
            "sections": [
              { "at_percent": 0, "section": "naca-0010-35", "thickness_percent": 8 },
              { "at_percent": 55, "section": "estuary", "thickness_percent": 8.5 },
              { "at_percent": 100, "section": "naca-16-009", "thickness_percent": 9, "twist_degrees": -1.25 },
            ],
            "imported_sections": [
              { "name": "estuary", "points": [[1, 0.002], [0.7, 0.03], [0.35, 0.05], [0.1, 0.035], [0, 0], [0.1, -0.035], [0.35, -0.05], [0.7, -0.03], [1, -0.002]] },
            ],
            "tip": "rounded", "tip_rounding_mm": 4,
            "starboard_finish": "polished", "port_finish": "bare-print",
            "strip": { "sheet_mm": 0.3, "overhang_mm": 12 },
            "flange": { "overhang_mm": 8, "fillet_mm": 6 },
          },
          "base": {
            "box": "measured", "fixing": "clamp-rods",
            "measured": {
              "hull_length_mm": 170, "deep_length_mm": 160, "hull_width_mm": 18, "deep_width_mm": 16, "front_depth_mm": 40,
              "bolts": [ { "from_front_mm": 30, "lean_degrees": 4 }, { "from_front_mm": 140, "thread": "M6" } ],
            },
          },
          "hardware": {
            "clamp_rods": [ { "from_front_mm": 40 }, { "from_front_mm": 120, "nut": "square", "lean_degrees": 12 } ],
            "carbon_rods": [ { "root_chord_percent": 30, "tip_chord_percent": 40, "to_depth_mm": 150 } ],
            "cavities": [ { "name": "tracker", "at_depth_mm": 60, "at_chord_percent": 45, "length_mm": 30, "height_mm": 20, "room_mm": 6 } ],
          },
          "parts": { "number": "EW-07", "cuts": [ { "at_depth_mm": 90 }, { "at_depth_mm": 150, "slope_degrees": -8 } ], "blade_attitude": "lying" },
          "print": { "printer": "shed printer", "bed_x_mm": 180, "bed_y_mm": 180, "bed_z_mm": 180 },
          "pour": { "cooling": "still-air", "ports": { "side": "port" } },
          "prove": { "mass_kg": 12, "at_chord": "leading-edge" },
        }
        """;
}
