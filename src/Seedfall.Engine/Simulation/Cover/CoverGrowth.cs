using Seedfall.Engine.Timing;

namespace Seedfall.Engine.Simulation.Cover;

/// <summary>
/// Living cover by the day: surviving turf thickens within its reach (bunch grasses) or creeps into gaps (rhizomes), seedlings
/// grow logistically into what is left.
/// </summary>
public sealed class CoverGrowth
{
    /// <summary>Share of the gap bunch grasses close from their crowns alone (judged: about 5 cm around each).</summary>
    private const double BunchReach = 0.35;

    /// <summary>Front speed of rhizomes at 15 degC, m/d: 7 mm a week, of 5 to 15 at best (common practice, low confidence).</summary>
    private const double RhizomeMPerDay = 0.007 / 7.0;

    /// <summary>Radius of a typical gap in thin turf, m (assumed).</summary>
    private const double GapRadiusM = 0.15;

    private readonly CoverTraits _turf;
    private readonly CoverTraits _seedling;
    private readonly double _most;

    /// <summary>A patch on the day seed goes down.</summary>
    /// <param name="turfShare">Living cover, 0 to 1.</param>
    /// <param name="turf">The turf that lives.</param>
    /// <param name="seedling">The grass sown (the mix's mean).</param>
    public CoverGrowth(double turfShare, CoverTraits turf, CoverTraits seedling)
    {
        if (!(turfShare is >= 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(turfShare), turfShare, "a share from 0 to 1 is needed");
        }

        (Turf, _turf, _seedling) = (turfShare, turf, seedling);
        _most = turf.Rhizomes ? 1.0 : turfShare + (BunchReach * (1.0 - turfShare));
    }

    /// <summary>Cover of the surviving turf, 0 to 1.</summary>
    public double Turf { get; private set; }

    /// <summary>Cover of the seedlings, 0 to 1.</summary>
    public double Seedlings { get; private set; }

    /// <summary>All living cover, 0 to 1.</summary>
    public double Total => Math.Min(1.0, Turf + Seedlings);

    /// <summary>Moves one day on.</summary>
    /// <param name="airC">Mean air temperature, degC.</param>
    /// <param name="emergedPerM2">Seedlings that came up that day, per m2.</param>
    /// <param name="lostShare">Share of the seedlings lost that day.</param>
    /// <param name="conditions">Nitrogen, light, water.</param>
    /// <param name="vigor">Growth over the usual, above 0.</param>
    public void Day(double airC, double emergedPerM2, double lostShare, in GrowthConditions conditions, double vigor = 1.0)
    {
        var growth = vigor * RelativeTo15(airC) * conditions.Factor;
        Turf += _turf.Rhizomes ? Creep(growth) : Logistic(Turf, _most, _turf.RateAt15 * growth);
        Turf = Math.Min(Turf, _most);
        var room = Math.Max(0.0, 1.0 - Turf);
        Seedlings += (emergedPerM2 * _seedling.SeedlingM2 * room) - (lostShare * Seedlings);
        Seedlings = Math.Clamp(Seedlings + Logistic(Seedlings, room, _seedling.RateAt15 * growth), 0.0, room);
    }

    /// <summary>Growth at a temperature over growth at 15 degC: growth potential with its optimum at 20 degC (Gelernter and Stowell).</summary>
    public static double RelativeTo15(double airC) =>
        GrowingDays.GrowthPotentialCore(airC) / GrowingDays.GrowthPotentialCore(15.0);

    /// <summary>Gaps shrink from their edge: d gap = -2 v / R gap.</summary>
    private double Creep(double growth) => (1.0 - Turf) * Math.Min(1.0, 2.0 * RhizomeMPerDay * growth / GapRadiusM);

    /// <summary>A day of dC = r C (1 - C/C_x) dt in closed form.</summary>
    internal static double Logistic(double cover, double most, double rate)
    {
        if (cover <= 0.0 || most <= 0.0 || cover >= most)
        {
            return 0.0;
        }

        var grown = most / (1.0 + (((most / cover) - 1.0) * Math.Exp(-rate)));
        return grown - cover;
    }
}
