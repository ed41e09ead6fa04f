namespace Finwright.Workshop.Comparing;

/// <summary>Keys of the results that a build is held against.</summary>
public static class ResultKeys
{
    /// <summary>Plastic of the fin's parts, g.</summary>
    public const string Plastic = "print.plastic";

    /// <summary>Time of the fin's plates, h.</summary>
    public const string PrintTime = "print.time";

    /// <summary>Room for resin, ml.</summary>
    public const string Pores = "pour.pores";

    /// <summary>What goes into pores and shrinkage, ml.</summary>
    public const string ResinInFin = "pour.in_fin";

    /// <summary>What is poured: pores, shrinkage and what stands in the reservoirs, ml.</summary>
    public const string ResinPoured = "pour.poured";

    /// <summary>Mass of resin in the fin, g.</summary>
    public const string ResinMass = "plan.resin_mass";

    /// <summary>Mass of rods, nuts, dowels and strip in the fin, g.</summary>
    public const string HardwareMass = "plan.hardware_mass";

    /// <summary>Mass of the finished fin, g.</summary>
    public const string FinMass = "plan.fin_mass";

    /// <summary>Highest temperature of the resin, °C.</summary>
    public const string Peak = "cure.peak";

    /// <summary>Cost of what the fin takes.</summary>
    public const string Cost = "plan.cost";

    /// <summary>Plastic of one part, g.</summary>
    public static string PlasticOf(string part) => $"print.{part}.plastic";

    /// <summary>Time of one part, h.</summary>
    public static string TimeOf(string part) => $"print.{part}.time";
}
