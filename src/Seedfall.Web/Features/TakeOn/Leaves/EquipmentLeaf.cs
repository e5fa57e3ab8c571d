using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>Spreader and sprayer.</summary>
internal sealed class EquipmentLeaf() : Leaf("equipment", "Spreader and sprayer", "Tank and carrier give the number of tanks and what goes into each.")
{
    private static readonly ChoiceField<SpreaderKind> Spreader = new("spreader", "Spreader", Answers.Spreaders);
    private static readonly QuantityField<Length> Swath = new("swath", "Effective swath", UnitChoices.Distance, Length.Zero, Length.FromMeters(30.0)) { AboveLeast = true, Hint = "From a pan test: twice the distance to where half falls." };
    private static readonly QuantityField<Speed> Walk = new("walk", "Walking speed", UnitChoices.Speed, Speed.FromMetersPerSecond(0.0), Speed.FromMetersPerSecond(4.0)) { AboveLeast = true };
    private static readonly ChoiceField<SprayerKind> Sprayer = new("sprayer", "Sprayer", Answers.Sprayers);
    private static readonly QuantityField<Volume> Tank = new("tank", "Tank", UnitChoices.Volume, Volume.Zero, Volume.FromLiters(5000.0)) { AboveLeast = true };
    private static readonly QuantityField<VolumePerArea> Carrier = new("carrier", "Carrier at your calibrated walk", UnitChoices.Carrier, VolumePerArea.FromLitersPerHectare(0.0), VolumePerArea.FromLitersPerHectare(50000.0)) { AboveLeast = true, Hint = "Spray water on a measured 1,000 sq ft at your usual walk and refill the tank." };

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
        [new("Spreader", [Spreader, Swath, Walk]), new("Sprayer", [Sprayer, Tank, Carrier])];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        List<string> lines = [];
        if (lawn.Spreader is { } spreader)
        {
            lines.Add($"{Answers.Spreaders.Words(spreader.Kind)} spreader");
        }

        if (lawn.Sprayer is { } sprayer)
        {
            lines.Add($"{Answers.Sprayers.Words(sprayer.Kind)} sprayer{(sprayer.Tank is { } tank ? $", {FigureText.Show(QuantityKind.Volume, tank.Liters, system)}" : "")}");
        }

        return lines;
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Spreader.Fill(entries, lawn.Spreader?.Kind);
        Swath.Fill(entries, lawn.Spreader?.Swath);
        Walk.Fill(entries, lawn.Spreader?.WalkingSpeed);
        Sprayer.Fill(entries, lawn.Sprayer?.Kind);
        Tank.Fill(entries, lawn.Sprayer?.Tank);
        Carrier.Fill(entries, lawn.Sprayer?.Carrier);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var (spreader, swath, walk) = (Spreader.Read(entries), Swath.Read(entries), Walk.Read(entries));
        var (sprayer, tank, carrier) = (Sprayer.Read(entries), Tank.Read(entries), Carrier.Read(entries));
        return lawn with
        {
            Spreader = (spreader, swath, walk) is (null, null, null) ? null : new SpreaderFacts { Kind = spreader ?? SpreaderKind.Rotary, Swath = swath, WalkingSpeed = walk },
            Sprayer = (sprayer, tank, carrier) is (null, null, null) ? null : new SprayerFacts
            {
                Kind = sprayer ?? SprayerKind.Backpack,
                Tank = tank,
                Carrier = carrier,
                Calibrated = carrier is not null && carrier == lawn.Sprayer?.Carrier ? lawn.Sprayer?.Calibrated : null,
            },
        };
    }
}
