using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>Seed lots as their tags read.</summary>
internal sealed class SeedLeaf() : ListLeaf<SeedLot>("seed", "Seed lots", "Purity times germination is what you pay for; coating and chaff do not grow.")
{
    private const int MostKinds = 4;

    private static readonly TextField Number = new("lot", "Lot number on the tag") { Required = true, Longest = 40 };
    private static readonly NumberField OtherCrop = new("othercrop", "Other crop", 0.0, 100.0, "%");
    private static readonly NumberField Inert = new("inert", "Inert matter", 0.0, 100.0, "%");
    private static readonly NumberField WeedSeed = new("weedseed", "Weed seed", 0.0, 100.0, "%");
    private static readonly DateField Tested = new("tested", "Date of the germination test");
    private static readonly TickField Endophyte = new("endophyte", "The tag says endophyte-enhanced");
    private static readonly IReadOnlyList<Kind> Kinds = [.. Enumerable.Range(1, MostKinds).Select(n => new Kind(n))];

    public override string Each => "lot";

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("The tag", [Number]),
        .. Kinds.Select((k, i) => new FieldGroup(i == 0 ? "First seed on the tag" : $"Seed {(i + 1).ToString(CultureInfo.InvariantCulture)} on the tag", k.Fields) { Folded = i > 0 }),
        new("The rest of the tag", [OtherCrop, Inert, WeedSeed, Tested, Endophyte]) { Folded = true },
        BagFields.Group,
    ];

    protected override IReadOnlyList<SeedLot> Items(Lawn lawn) => lawn.SeedLots;

    protected override Lawn With(Lawn lawn, IReadOnlyList<SeedLot> items) => lawn with { SeedLots = items };

    protected override string Gist(SeedLot item, Lawn lawn, UnitSystem system) =>
        $"{item.LotNumber}: {string.Join(", ", item.Components.Select(c => Answers.Grasses.Words(c.Species)))}";

    protected override void FillItem(SeedLot? before, Lawn lawn, Entries entries)
    {
        Number.Fill(entries, before?.LotNumber);
        OtherCrop.FillShare(entries, before?.OtherCrop);
        Inert.FillShare(entries, before?.Inert);
        WeedSeed.FillShare(entries, before?.WeedSeed);
        Tested.Fill(entries, before?.TestDate);
        Endophyte.Fill(entries, before?.Endophyte ?? false);
        for (var i = 0; i < MostKinds; i++)
        {
            Kinds[i].Fill(i < (before?.Components.Count ?? 0) ? before!.Components[i] : null, entries);
        }

        BagFields.Fill(before?.Bags ?? [], entries);
    }

    protected override SeedLot? ReadItem(SeedLot? before, Lawn lawn, Entries entries)
    {
        var number = Number.Read(entries);
        if (number is not null && lawn.SeedLots.Any(l => !ReferenceEquals(l, before) && l.LotNumber == number))
        {
            entries.Wrong(Number.Name, $"{Number.Label}: the lot {number} is already entered.");
        }

        var components = Kinds.Select((k, i) => k.Read(entries, needed: i == 0)).OfType<SeedComponent>().ToList();
        if (components.Sum(c => c.Purity.Value) > 1.0 + 1e-9)
        {
            entries.Wrong(Kinds[0].Purity.Name, $"{Kinds[0].Purity.Label}: the seeds of one tag add up to at most 100 %; these add up to {NumberText.Write(components.Sum(c => c.Purity.Percent))} %.");
        }

        var lot = new SeedLot
        {
            LotNumber = number ?? "",
            Components = components,
            OtherCrop = OtherCrop.ReadShare(entries),
            Inert = Inert.ReadShare(entries),
            WeedSeed = WeedSeed.ReadShare(entries),
            TestDate = Tested.Read(entries),
            Endophyte = Endophyte.Read(entries),
            Bags = BagFields.Read(entries),
        };
        return entries.Sound ? lot : null;
    }

    /// <summary>The fields of one seed on the tag.</summary>
    private sealed class Kind
    {
        private readonly ChoiceField<GrassSpecies> _grass;
        private readonly NumberField _germination;
        private readonly NumberField _seeds;
        private readonly TextField _variety;

        public Kind(int number)
        {
            var n = number.ToString(CultureInfo.InvariantCulture);
            _grass = new($"grass{n}", "Grass", Answers.Grasses) { Blank = "None" };
            Purity = new($"purity{n}", "Purity", 0.1, 100.0, "%") { Hint = "Pure seed of this kind, share of the bag’s weight." };
            _germination = new($"germination{n}", "Germination", 0.0, 100.0, "%");
            _seeds = new($"seeds{n}", "Seeds per pound, if the tag says", 1_000.0, 5_000_000.0, "per lb");
            _variety = new($"variety{n}", "Variety") { Longest = 60 };
        }

        public NumberField Purity { get; }

        public IReadOnlyList<Field> Fields => [_grass, Purity, _germination, _seeds, _variety];

        public void Fill(SeedComponent? component, Entries entries)
        {
            _grass.Fill(entries, component?.Species);
            Purity.FillShare(entries, component?.Purity);
            _germination.FillShare(entries, component?.Germination);
            _seeds.Fill(entries, component?.SeedsPerKilogram is { } perKilogram ? perKilogram * Mass.FromPounds(1.0).Kilograms : null);
            _variety.Fill(entries, component?.Variety);
        }

        /// <summary>Null where the grass is blank and not needed, or a problem was noted.</summary>
        public SeedComponent? Read(Entries entries, bool needed)
        {
            var species = (_grass with { Required = needed || Fields.Skip(1).Any(f => entries.Text(f.Name).Length > 0) }).Read(entries);
            if (species is not { } grass)
            {
                return null;
            }

            var purity = (Purity with { Required = true }).ReadShare(entries);
            var germination = (_germination with { Required = true }).ReadShare(entries);
            var (seeds, variety) = (_seeds.Read(entries), _variety.Read(entries));
            return purity is { } p && germination is { } g
                ? new SeedComponent(grass, p, g) { SeedsPerKilogram = seeds is { } perPound ? perPound / Mass.FromPounds(1.0).Kilograms : null, Variety = variety }
                : null;
        }
    }
}
