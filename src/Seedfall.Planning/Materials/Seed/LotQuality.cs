using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>What a lot's tag says about its worth.</summary>
internal static class LotQuality
{
    private const string Lsu = "LSU AgCenter, Best buy on grass seed";
    private const string WestVirginia = "West Virginia rule 61-09, appendix 1, as one state's legal minimum";
    private const double MostOtherCrop = 0.005;
    private const double MostWeed = 0.003;
    private const double MostInert = 0.04;
    private const double CoatedFrom = 0.20;
    private const double GoodGermination = 0.85;
    private const int OldTestMonths = 9;
    private const int StaleTestMonths = 15;

    internal static IEnumerable<Advice> For(Lawn lawn, Choices choices)
    {
        var seedDown = choices.SeedDown ?? new DateOnly(choices.Season, lawn.Place.LatitudeDeg < 0.0 ? 3 : 9, 1);
        return lawn.SeedLots.SelectMany(l => Impurity(l).Concat(Germination(l)).Concat(Test(l, seedDown)).Concat(Endophyte(l, lawn)));
    }

    private static IEnumerable<Advice> Impurity(SeedLot lot)
    {
        if (lot.OtherCrop is { } crop && crop.Value > MostOtherCrop)
        {
            yield return Line(lot, "other-crop", $"{Percent(crop)} other crop; good seed has under 0.5 %, and grassy weeds may legally count as crop.", Lsu);
        }

        if (lot.WeedSeed is { } weed && weed.Value > MostWeed)
        {
            yield return Line(lot, "weed", $"{Percent(weed)} weed seed; good seed has under 0.3 %, the best none.", Lsu);
        }

        if (lot.Inert is { } inert && inert.Value > MostInert)
        {
            yield return inert.Value >= CoatedFrom
                ? Line(lot, "inert", $"{Percent(inert)} inert matter: a coated lot. Coating counts as inert, so more weight is needed for the same live seed.", "7 CFR 201.51b(f)")
                : Line(lot, "inert", $"{Percent(inert)} inert matter; good uncoated seed has under 4 %.", Lsu);
        }
    }

    private static IEnumerable<Advice> Germination(SeedLot lot)
    {
        foreach (var component in lot.Components)
        {
            var legal = LegalLeast(component.Species);
            if (component.Germination.Value < legal)
            {
                yield return Line(lot, $"germination.{SpeciesIds.Of(component.Species)}", $"germination {Percent(component.Germination)} is below {legal * 100.0:0} %: in some states it may not be sold. Buy another lot.", WestVirginia);
            }
            else if (component.Germination.Value < GoodGermination && component.Species != GrassSpecies.KentuckyBluegrass)
            {
                yield return Line(lot, $"germination.{SpeciesIds.Of(component.Species)}", $"germination {Percent(component.Germination)}; about 85 % is good.", Lsu);
            }
        }
    }

    private static double LegalLeast(GrassSpecies species) => species switch
    {
        GrassSpecies.KentuckyBluegrass => 0.65,
        GrassSpecies.PerennialRyegrass => 0.80,
        _ => 0.70,
    };

    private static IEnumerable<Advice> Test(SeedLot lot, DateOnly seedDown)
    {
        if (lot.TestDate is not { } test)
        {
            yield break;
        }

        var months = (seedDown.Year - test.Year) * 12 + seedDown.Month - test.Month;
        if (months > StaleTestMonths)
        {
            yield return Practice(lot, "test", $"the germination test will be {months} months old at seed-down: have it tested again, or sow a counted hundred on damp paper.");
        }
        else if (months > OldTestMonths)
        {
            yield return Practice(lot, "test", $"the germination test will be {months} months old at seed-down: many states want a newer one on seed for sale.");
        }
    }

    private static IEnumerable<Advice> Endophyte(SeedLot lot, Lawn lawn)
    {
        if (lot.Endophyte && lawn.GrazedOrFed != false)
        {
            yield return Line(
                lot,
                "endophyte",
                lawn.GrazedOrFed == true
                    ? "the tag says endophyte-enhanced, and stock graze here or clippings are fed: such grass poisons horses, cattle and sheep. Use Kentucky bluegrass or endophyte-free seed."
                    : "the tag says endophyte-enhanced: keep stock off and feed no clippings to animals.",
                "Manitoba Agriculture, after Oregon State University");
        }
    }

    private static Advice Line(SeedLot lot, string what, string statement, string source) =>
        new($"seed.lot.{lot.LotNumber}.{what}", $"Lot {lot.LotNumber}: {statement}", source, Sureness.Published);

    private static Advice Practice(SeedLot lot, string what, string statement) =>
        new($"seed.lot.{lot.LotNumber}.{what}", $"Lot {lot.LotNumber}: {statement}", Worked.Practice, Sureness.CommonPractice);

    private static string Percent(Fraction share) => $"{share.Percent.ToString("0.##", CultureInfo.InvariantCulture)} %";
}
