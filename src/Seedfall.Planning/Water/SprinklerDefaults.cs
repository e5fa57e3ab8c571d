using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>What a kind of sprinkler usually gives, used until it is measured.</summary>
/// <param name="Rate">Usual precipitation rate.</param>
/// <param name="LowQuarter">Usual distribution uniformity of the low quarter.</param>
/// <param name="Source">Where both come from.</param>
/// <param name="Sureness">How sure they are.</param>
internal sealed record SprinklerDefaults(PrecipitationRate Rate, Fraction LowQuarter, string Source, Sureness Sureness)
{
    private const string Tutorial = "usual rate and uniformity, California State University Fresno homeowner tutorial; put catch cans out";

    private const string Practice = "usual rate, common practice, no source read; uniformity assumed; put catch cans out";

    internal static SprinklerDefaults For(SprinklerKind kind) => kind switch
    {
        SprinklerKind.FixedSpray => Of(1.7, 0.60, Tutorial, Sureness.Published),
        SprinklerKind.Impact => Of(0.5, 0.70, Tutorial, Sureness.Published),
        SprinklerKind.Rotor => Of(0.45, 0.65, Practice, Sureness.CommonPractice),
        SprinklerKind.MultiStreamRotor => Of(0.5, 0.70, Practice, Sureness.CommonPractice),
        SprinklerKind.Oscillating => Of(0.5, 0.60, Practice, Sureness.CommonPractice),
        SprinklerKind.Traveling => Of(0.4, 0.60, Practice, Sureness.CommonPractice),
        SprinklerKind.HandHose => Of(0.5, 0.50, Practice, Sureness.Assumed),
        SprinklerKind.Unknown => Of(0.5, 0.60, Practice, Sureness.Assumed),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a kind of sprinkler"),
    };

    private static SprinklerDefaults Of(double inchesPerHour, double uniformity, string source, Sureness sureness) =>
        new(PrecipitationRate.FromInchesPerHour(inchesPerHour), Fraction.Of(uniformity), source, sureness);
}
