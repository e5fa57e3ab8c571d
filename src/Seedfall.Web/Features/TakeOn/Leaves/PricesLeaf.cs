using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>Prices where no bag says its own.</summary>
internal sealed class PricesLeaf() : Leaf("prices", "Prices", "What is left blank is left out of the cost, and the plan says so.")
{
    private const double Most = 100_000.0;

    private static readonly TextField Currency = new("currency", "Currency") { Longest = 3, Hint = "Three letters, for example USD or CAD." };
    private static readonly NumberField Water = new("water", "Water", 0.0, Most, "per 1,000 gal");
    private static readonly NumberField Seed = new("seedprice", "Seed", 0.0, Most, "per lb");
    private static readonly NumberField Starter = new("starterprice", "Starter fertilizer", 0.0, Most, "per lb");
    private static readonly NumberField PreEmergent = new("preprice", "Liquid pre-emergent", 0.0, Most, "per fl oz");
    private static readonly NumberField DryPreEmergent = new("drypreprice", "Dry pre-emergent", 0.0, Most, "per oz by weight");
    private static readonly NumberField Cover = new("coverprice", "Cover", 0.0, Most, "per lb");

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
        [new("What you pay", [Currency, Water, Seed, Starter, PreEmergent, DryPreEmergent, Cover])];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        if (lawn.Prices is not { } p)
        {
            return [];
        }

        var known = ((decimal?[])[p.WaterPerThousandGallons, p.SeedPerPound, p.StarterPerPound, p.PreEmergentPerFluidOunce ?? p.PreEmergentPerOunce, p.CoverPerPound]).Count(v => v is not null);
        return [$"{NumberText.Write(known)} of 5 prices, in {p.Currency}"];
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Currency.Fill(entries, lawn.Prices?.Currency ?? "USD");
        Water.FillMoney(entries, lawn.Prices?.WaterPerThousandGallons);
        Seed.FillMoney(entries, lawn.Prices?.SeedPerPound);
        Starter.FillMoney(entries, lawn.Prices?.StarterPerPound);
        PreEmergent.FillMoney(entries, lawn.Prices?.PreEmergentPerFluidOunce);
        DryPreEmergent.FillMoney(entries, lawn.Prices?.PreEmergentPerOunce);
        Cover.FillMoney(entries, lawn.Prices?.CoverPerPound);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var currency = (Currency.Read(entries) ?? "USD").ToUpperInvariant();
        if (currency.Length != 3 || !currency.All(char.IsAsciiLetterUpper))
        {
            entries.Wrong(Currency.Name, $"{Currency.Label}: three letters such as USD are needed, not “{currency}”.");
        }

        var prices = new PriceList
        {
            Currency = currency,
            WaterPerThousandGallons = Water.ReadMoney(entries),
            SeedPerPound = Seed.ReadMoney(entries),
            StarterPerPound = Starter.ReadMoney(entries),
            PreEmergentPerFluidOunce = PreEmergent.ReadMoney(entries),
            PreEmergentPerOunce = DryPreEmergent.ReadMoney(entries),
            CoverPerPound = Cover.ReadMoney(entries),
        };
        return lawn with { Prices = prices == new PriceList() ? null : prices };
    }
}
