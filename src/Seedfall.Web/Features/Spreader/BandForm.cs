using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Spreader;

/// <summary>Where the wheels of a drop spreader run, as a form with its answers in the address.</summary>
internal static class BandForm
{
    private static readonly QuantityField<Length> Holes = new("holes", "Width of the row of holes", UnitChoices.SprayHeight, Length.Zero, Length.FromMeters(3.0)) { AboveLeast = true, Required = true, Hint = "From the first hole to the last." };
    private static readonly QuantityField<Length> Track = new("track", "Distance between the wheels", UnitChoices.SprayHeight, Length.Zero, Length.FromMeters(3.0)) { AboveLeast = true, Required = true, Hint = "From the middle of one tire to the middle of the other." };

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("The spreader", [Holes, Track]) { Bare = true }];

    public static Entries From(IQueryCollection query, UnitSystem system)
    {
        var entries = new Entries(system);
        foreach (var name in new[] { Holes.Name, Holes.UnitName, Track.Name, Track.UnitName }.Where(query.ContainsKey))
        {
            var text = query[name].ToString();
            entries.Put(name, text.Length > 40 ? text[..40] : text);
        }

        return entries;
    }

    /// <summary>How far inside its last track the near wheel runs; null where nothing was entered or a problem was noted.</summary>
    public static Figure? Read(Entries entries)
    {
        if (!entries.Has(Holes.Name) && !entries.Has(Track.Name))
        {
            return null;
        }

        var (holes, track) = (Holes.Read(entries), Track.Read(entries));
        return entries.Sound && holes is { } w && track is { } t ? SpreaderFigures.WheelInside(w, t) : null;
    }
}
