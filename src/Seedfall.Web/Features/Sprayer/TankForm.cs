using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Sprayer;

/// <summary>What the sprayer is taken to be for one mix. Null takes the lawn's notes.</summary>
internal sealed record TankAsk(VolumePerArea? Carrier, Volume? Tank, Volume? Left);

/// <summary>The sprayer of one mix as a form, its answers in the address.</summary>
internal static class TankForm
{
    private static readonly IReadOnlyList<UnitChoice<Volume>> Small =
    [
        new("floz", "fl oz", UnitSystem.UsCustomary, Volume.FromFluidOunces, v => v.FluidOunces),
        new("mL", "mL", UnitSystem.Metric, Volume.FromMilliliters, v => v.Milliliters),
    ];

    private static readonly QuantityField<VolumePerArea> Carrier = SprayerFields.Wanted with { Name = "carrier", Label = "Carrier it puts out", Hint = "From the calibration." };
    private static readonly QuantityField<Volume> Left = new("left", "Mix the pump cannot draw", Small, Volume.Zero, Volume.FromGallons(5.0)) { Hint = "Measured once. Blank takes 8 fl oz." };

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("The sprayer for this mix", [Carrier, SprayerFields.Tank, Left]) { Hint = "Changes this page only. To keep a calibration, keep it where it was made." }];

    public static Entries From(IQueryCollection query, UnitSystem system, Lawn lawn)
    {
        var entries = new Entries(system);
        if (query.Count == 0)
        {
            Carrier.Fill(entries, lawn.Sprayer?.Carrier);
            SprayerFields.Tank.Fill(entries, lawn.Sprayer?.Tank);
        }

        foreach (var (name, value) in query)
        {
            var text = value.ToString();
            entries.Put(name, text.Length > 40 ? text[..40] : text);
        }

        return entries;
    }

    public static TankAsk Read(Entries entries)
    {
        var asked = new TankAsk(Carrier.Read(entries), SprayerFields.Tank.Read(entries), Left.Read(entries));
        return entries.Sound ? asked : new(null, null, null);
    }
}
