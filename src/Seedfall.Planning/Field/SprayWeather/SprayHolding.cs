using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>How to hold the nozzle and walk, so that spray stays on the lawn and off the one who sprays.</summary>
public static class SprayHolding
{
    /// <summary>Highest nozzle of a turf label read, above the canopy; the label in hand decides.</summary>
    public static Length HighestNozzle { get; } = Length.FromFeet(4.0);

    private const string Practice = "common practice, no source read";

    /// <summary>In the order of the work.</summary>
    /// <param name="from">Where the wind blows from; null where it was not read.</param>
    public static IReadOnlyList<Advice> For(WindFrom? from)
    {
        var (downwind, upwind) = from is { } wind ? (Name(Opposite(wind)), Name(wind)) : ("downwind", "wind");
        return
        [
            new("spray.hold.coarse", "Take a nozzle of coarse or very coarse drops at the lowest pressure that gives an even fan: the fewer fine drops, the less there is to drift.", "fines by class: medium at most 20 % of the volume under 150 micrometers, coarse under 10 %, very coarse under 5 % (grains research manual on ASABE S572.3)", Sureness.Published),
            new("spray.hold.low", FormattableString.Invariant($"Hold it low, {SprayLimits.UsualNozzleHeight.Inches:0} in ({SprayLimits.UsualNozzleHeight.Centimeters:0} cm) or as the fan needs to meet; never above the label’s height, {HighestNozzle.Feet:0} ft ({HighestNozzle.Meters:0.#} m) over the grass on one turf label read."), "turf label example of 2,4-D", Sureness.Published),
            new("spray.hold.edge", from is null
                ? "Begin along the downwind edge and work into the wind, strip by strip, so that you never walk through what you sprayed."
                : $"Begin along the {downwind} edge and work toward the {upwind}, strip by strip, so that you never walk through what you sprayed.", Practice, Sureness.CommonPractice),
            new("spray.hold.away", "Turn the tip away from beds, water, neighbors and people, and away from yourself; along beds hold a board between.", Practice, Sureness.CommonPractice),
            new("spray.hold.strip", $"Leave the last strip on the {downwind} side for another day where a bed, a vegetable garden, water or an open window lies beyond it.", Practice, Sureness.CommonPractice),
            new("spray.hold.shut", "Shut off at every turn and at every edge; look back at the mist after the first strokes and stop where it leaves the lawn.", Practice, Sureness.CommonPractice),
        ];
    }

    private static WindFrom Opposite(WindFrom from) => (WindFrom)(((int)from + 4) % 8);

    private static string Name(WindFrom point) => point switch
    {
        WindFrom.North => "north",
        WindFrom.NorthEast => "northeast",
        WindFrom.East => "east",
        WindFrom.SouthEast => "southeast",
        WindFrom.South => "south",
        WindFrom.SouthWest => "southwest",
        WindFrom.West => "west",
        WindFrom.NorthWest => "northwest",
        _ => throw new ArgumentOutOfRangeException(nameof(point), point, "is no point of the compass"),
    };
}
