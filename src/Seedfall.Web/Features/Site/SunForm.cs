using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Site;

/// <summary>One obstacle as a form: direction by compass, height by fists, degrees, or height and distance.</summary>
internal static class SunForm
{
    private const double DegreesPerFist = 10.0;

    private static readonly TextField Name = new("obstacle", "What it is") { Required = true, Longest = 60, Hint = "For example: house, neighbor’s maple, spruce row." };
    private static readonly ChoiceField<ObstacleKind> Kind = new("kind", "What comes through", [(ObstacleKind.Solid, "solid", "Nothing: house, wall, hill"), (ObstacleKind.Evergreen, "evergreen", "A little, all year: evergreen"), (ObstacleKind.Deciduous, "deciduous", "More once its leaves are down")]) { Required = true, Blank = null };
    private static readonly NumberField Left = new("left", "Its left edge lies toward", 0.0, 360.0, "° compass") { Required = true, Hint = "North 0, east 90, south 180, west 270." };
    private static readonly NumberField Right = new("right", "Its right edge lies toward", 0.0, 360.0, "° compass") { Required = true };
    private static readonly NumberField Fists = new("fists", "Its top, in fists above eye level", 0.0, 9.0, "fists") { Hint = "Stretch your arm out, rest one fist on eye level, set fist on fist up to the top: each is about 10°." };
    private static readonly NumberField Angle = new("angle", "or its top, in degrees", 0.0, 90.0, "°") { Hint = "From a level app or an inclinometer." };
    private static readonly QuantityField<Length> Height = new("height", "or its height", UnitChoices.Distance, Length.Zero, Length.FromMeters(3000.0)) { AboveLeast = true };
    private static readonly QuantityField<Length> Distance = new("distance", "and how far away it stands", UnitChoices.Distance, Length.Zero, Length.FromMeters(100_000.0)) { AboveLeast = true };
    private static readonly NumberField Through = new("through", "Sun let through in leaf", 0.0, 100.0, "%");
    private static readonly NumberField Bare = new("bare", "Sun let through when bare", 0.0, 100.0, "%");
    private static readonly DateField BareFrom = new("bareFrom", "Bare from") { Hint = "The year does not count; blank takes the usual day of the latitude." };

    /// <summary>Direction the slope of a patch faces.</summary>
    public static NumberField Faces { get; } = new("faces", "The slope faces", 0.0, 360.0, "° compass") { Hint = "Downhill: north 0, east 90, south 180, west 270. Blank leaves the slope out of the sun." };

    public static IReadOnlyList<FieldGroup> Groups { get; } =
    [
        new("The obstacle", [Name, Kind]) { Bare = true },
        new("Where it stands", [Left, Right]) { Hint = "Stand in the middle of the patch and turn from left to right. Set the phone’s compass to true north." },
        new("How high it reaches", [Fists, Angle]) { Hint = "One of the three ways is enough." },
        new("By height and distance", [Height, Distance]) { Folded = true },
        new("What comes through", [Through, Bare, BareFrom]) { Folded = true, Hint = "Blank takes about 15 % in leaf, 60 % bare, 10 % through an evergreen." },
    ];

    public static void Fill(Entries entries, SkyObstacle? obstacle)
    {
        Name.Fill(entries, obstacle?.Name);
        Kind.Fill(entries, obstacle?.Kind);
        Left.Fill(entries, obstacle?.FromDeg);
        Right.Fill(entries, obstacle?.ToDeg);
        Fists.Fill(entries, null);
        Angle.Fill(entries, obstacle?.HeightAngleDeg);
        Height.Fill(entries, obstacle?.Height);
        Distance.Fill(entries, obstacle?.Distance);
        Through.FillShare(entries, obstacle?.Through);
        Bare.FillShare(entries, obstacle?.ThroughBare);
        BareFrom.Fill(entries, obstacle?.BareFrom);
    }

    /// <summary>The obstacle, or null where a problem was noted.</summary>
    public static SkyObstacle? Read(Entries entries)
    {
        var (fists, angle, height, distance) = (Fists.Read(entries), Angle.Read(entries), Height.Read(entries), Distance.Read(entries));
        if (fists is not null && angle is not null)
        {
            entries.Wrong(Fists.Name, "Give the top in fists or in degrees, not both.");
        }

        if (fists is null && angle is null && (height is null || distance is null))
        {
            entries.Wrong(Fists.Name, "How high does it reach? Count fists, give degrees, or its height and distance.");
        }

        var obstacle = new SkyObstacle
        {
            Name = Name.Read(entries) ?? "",
            Kind = Kind.Read(entries) ?? ObstacleKind.Solid,
            FromDeg = Left.Read(entries) ?? 0.0,
            ToDeg = Right.Read(entries) ?? 0.0,
            HeightAngleDeg = angle ?? (fists * DegreesPerFist),
            Height = height,
            Distance = distance,
            Through = Through.ReadShare(entries),
            ThroughBare = Bare.ReadShare(entries),
            BareFrom = BareFrom.Read(entries),
        };
        if (entries.Sound && obstacle.FromDeg == obstacle.ToDeg)
        {
            entries.Wrong(Right.Name, "The right edge must lie elsewhere than the left one; 0 to 360 is all around.");
        }

        return entries.Sound ? obstacle : null;
    }
}
