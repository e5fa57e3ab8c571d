using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Coverage;

/// <summary>One head as a form of numbers.</summary>
internal static class HeadForm
{
    private static readonly Length Far = Length.FromMeters(10_000.0);

    private static readonly QuantityField<Length> North = new("north", "How far north", UnitChoices.Distance, Length.Zero - Far, Far) { Required = true, Hint = "A minus means south." };
    private static readonly NumberField From = new("from", "Its arc runs clockwise from", 0.0, 360.0, "° compass") { Hint = "North 0, east 90, south 180, west 270. Both blank for the whole round." };
    private static readonly NumberField To = new("to", "to", 0.0, 360.0, "° compass");
    private static readonly TextField Leg = new("leg", "Depths in a leg of cans") { Longest = 400, Hint = "At equal steps from the head to the end of its throw, any one unit, for example 12 11 9 5 0." };

    public static QuantityField<Length> East { get; } = new("east", "How far east", UnitChoices.Distance, Length.Zero - Far, Far) { Required = true, Hint = "From the drawing’s zero point, as its corners are. A minus means west." };

    public static QuantityField<Length> Radius { get; } = new("radius", "Radius it reaches", UnitChoices.Distance, Length.FromMeters(0.5), Length.FromMeters(40.0)) { Required = true };

    public static QuantityField<FlowRate> Flow { get; } = new("flow", "What it puts out", UnitChoices.Flow, FlowRate.Zero, FlowRate.FromLitersPerMinute(400.0)) { Required = true, AboveLeast = true, Hint = "The nozzle’s rate at the pressure it gets, or a bucket and a watch." };

    /// <summary>Profiles that need no cans. Common practice, no source read.</summary>
    public static IReadOnlyList<(string Value, string Text, SprayProfile Profile)> Profiles { get; } =
    [
        ("triangular", "Evenly less to the end of the throw: most heads made to reach from head to head", new SprayProfile.Triangular()),
        ("parabolic", "Little less at first, then quickly", new SprayProfile.Parabolic()),
        ("elliptic", "Much the same, with a soft edge", new SprayProfile.Elliptic()),
        ("uniform", "The same all the way, with a sharp edge", new SprayProfile.Uniform()),
    ];

    private static readonly ChoiceField<char> Profile = new("profile", "How its water falls off", [.. Profiles.Select((p, i) => ((char)('0' + i), p.Value, p.Text)), ('l', "leg", "As a leg of cans shows")]) { Required = true, Blank = null };

    public static IReadOnlyList<FieldGroup> Groups { get; } =
    [
        new("Where it stands", [East, North]),
        new("What it reaches", [Radius, From, To]),
        new("What it gives", [Flow, Profile]),
        new("A leg of cans", [Leg]) { Folded = true },
    ];

    public static void Fill(Entries entries, CoverageHead? head)
    {
        East.Fill(entries, head is null ? null : new Length(head.At.EastM));
        North.Fill(entries, head is null ? null : new Length(head.At.NorthM));
        Radius.Fill(entries, head?.Throw);
        Flow.Fill(entries, head?.Flow);
        From.Fill(entries, head is { ArcDeg: < 360.0 } ? head.ArcFromDeg : null);
        To.Fill(entries, head is { ArcDeg: < 360.0 } ? (head.ArcFromDeg + head.ArcDeg) % 360.0 : null);
        var named = Profiles.ToList().FindIndex(p => p.Profile == head?.Profile);
        Profile.Fill(entries, head?.Profile is SprayProfile.Leg ? 'l' : (char)('0' + Math.Max(0, named)));
        Leg.Fill(entries, head?.Profile is SprayProfile.Leg leg ? string.Join(' ', leg.Depths.Select(NumberText.Write)) : null);
    }

    /// <summary>The head, or null where a problem was noted.</summary>
    public static CoverageHead? Read(Entries entries)
    {
        var (east, north, radius, flow, from, to) = (East.Read(entries), North.Read(entries), Radius.Read(entries), Flow.Read(entries), From.Read(entries), To.Read(entries));
        var sweep = from is null && to is null ? 360.0 : Sweep(entries, from, to);
        var profile = ReadProfile(entries);
        return entries.Sound && profile is not null
            ? new CoverageHead(new GroundPoint(east!.Value.Meters, north!.Value.Meters), radius!.Value, flow!.Value, profile) { ArcFromDeg = from ?? 0.0, ArcDeg = sweep }
            : null;
    }

    private static double Sweep(Entries entries, double? from, double? to)
    {
        if (from is not { } start || to is not { } end || start == end)
        {
            entries.Wrong(from is null ? From.Name : To.Name, "Its arc: two different directions are needed, or both blank for the whole round.");
            return 360.0;
        }

        return end > start ? end - start : end - start + 360.0;
    }

    private static SprayProfile? ReadProfile(Entries entries)
    {
        if (Profile.Read(entries) is not { } key)
        {
            return null;
        }

        if (key != 'l')
        {
            return Profiles[key - '0'].Profile;
        }

        var depths = entries.Text(Leg.Name).Split([' ', ';', '\t'], StringSplitOptions.RemoveEmptyEntries).Select(NumberText.Parse).ToArray();
        if (depths.Length is < 2 or > 60 || depths.Any(d => d is null or < 0.0) || depths.All(d => d == 0.0))
        {
            entries.Wrong(Leg.Name, $"{Leg.Label}: 2 to 60 depths with blanks between them are needed, none negative, not all zero.");
            return null;
        }

        return new SprayProfile.Leg([.. depths.Select(d => d!.Value)]);
    }
}
