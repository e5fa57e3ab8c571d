using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Site;

/// <summary>A laboratory's soil report as a form: each value in the unit and form the report prints.</summary>
internal static class ReportForm
{
    private static readonly NumberField Ph = new("ph", "pH in water", 3.0, 10.0);
    private static readonly NumberField Buffer = new("buffer", "Buffer pH", 4.0, 9.0) { Hint = "Also printed as BpH, SMP or lime index divided by ten. It sets the lime, by the lab’s own table." };
    private static readonly QuantityField<MassPerArea> Lime = new("lime", "Lime the lab recommends", LimeUnits, MassPerArea.Zero, MassPerArea.FromPoundsPerThousandSquareFeet(500.0)) { Hint = "Enter 0 where it wants none." };
    private static readonly ChoiceField<SoilExtract> Extract = new("extract", "Phosphorus by", [(SoilExtract.Mehlich3, "m3", "Mehlich-3"), (SoilExtract.Bray1, "bray", "Bray P-1"), (SoilExtract.Olsen, "olsen", "Olsen, bicarbonate")]) { Blank = null, Hint = "The report names it. The same soil gives other numbers with each." };
    private static readonly QuantityField<double> Phosphorus = new("phosphorus", "Phosphorus", Units(SoilTestUnits.PhosphorusInPhosphate, "P", "P₂O₅"), 0.0, 2000.0) { Hint = "Mind the unit: pounds per acre are twice the ppm, phosphate is more than twice the phosphorus." };
    private static readonly QuantityField<double> Potassium = new("potassium", "Potassium", Units(SoilTestUnits.PotassiumInPotash, "K", "K₂O"), 0.0, 5000.0);
    private static readonly QuantityField<double> Calcium = new("calcium", "Calcium", Plain, 0.0, 50_000.0);
    private static readonly QuantityField<double> Magnesium = new("magnesium", "Magnesium", Plain, 0.0, 10_000.0);
    private static readonly NumberField Organic = new("organic", "Organic matter", 0.0, 100.0, "%");
    private static readonly NumberField Exchange = new("exchange", "Cation exchange capacity", 0.0, 200.0, "meq/100 g");
    private static readonly NumberField Salts = new("salts", "Soluble salts, saturated paste", 0.0, 100.0, "dS/m") { Hint = "mmho/cm is the same. A 1:1 slurry reads about half the paste." };
    private static readonly DateField Tested = new("tested", "Date of the test") { Hint = "Phosphorus rules ask how old it is." };

    public static IReadOnlyList<FieldGroup> Groups { get; } =
    [
        new("Reaction and lime", [Ph, Buffer, Lime]),
        new("Nutrients", [Extract, Phosphorus, Potassium, Calcium, Magnesium]),
        new("The rest", [Organic, Exchange, Salts, Tested]),
    ];

    private static IReadOnlyList<UnitChoice<MassPerArea>> LimeUnits =>
    [
        new("lbM", "lb per 1,000 sq ft", UnitSystem.UsCustomary, MassPerArea.FromPoundsPerThousandSquareFeet, m => m.PoundsPerThousandSquareFeet),
        new("lbA", "lb per acre", UnitSystem.UsCustomary, MassPerArea.FromPoundsPerAcre, m => m.PoundsPerAcre),
        new("kg100", "kg per 100 m²", UnitSystem.Metric, v => MassPerArea.FromKilogramsPerSquareMeter(v / 100.0), m => m.KilogramsPerSquareMeter * 100.0),
    ];

    private static IReadOnlyList<UnitChoice<double>> Plain =>
    [
        new("ppm", "ppm", UnitSystem.UsCustomary, v => v, v => v),
        new("mgkg", "mg/kg", UnitSystem.Metric, v => v, v => v),
        new("lbA", "lb per acre", UnitSystem.UsCustomary, SoilTestUnits.PpmFromPoundsPerAcre, v => v * SoilTestUnits.PoundsPerAcrePerPpm),
    ];

    public static void Fill(Entries entries, SoilFacts? soil)
    {
        Ph.Fill(entries, soil?.Ph);
        Buffer.Fill(entries, soil?.BufferPh);
        Lime.Fill(entries, soil?.LabLime);
        Extract.Fill(entries, soil?.Extract ?? SoilExtract.Mehlich3);
        Phosphorus.Fill(entries, soil?.PhosphorusPpm);
        Potassium.Fill(entries, soil?.PotassiumPpm);
        Calcium.Fill(entries, soil?.CalciumPpm);
        Magnesium.Fill(entries, soil?.MagnesiumPpm);
        Organic.FillShare(entries, soil?.OrganicMatter);
        Exchange.Fill(entries, soil?.CationExchange);
        Salts.Fill(entries, soil?.SaltsDsPerM);
        Tested.Fill(entries, soil?.TestDate);
    }

    /// <summary>The soil with the report taken in; meaningless where a problem was noted.</summary>
    public static SoilFacts Read(Entries entries, SoilFacts? before) => (before ?? new SoilFacts()) with
    {
        Ph = Ph.Read(entries),
        BufferPh = Buffer.Read(entries),
        LabLime = Lime.Read(entries),
        Extract = Extract.Read(entries) ?? SoilExtract.Mehlich3,
        PhosphorusPpm = Phosphorus.Read(entries),
        PotassiumPpm = Potassium.Read(entries),
        CalciumPpm = Calcium.Read(entries),
        MagnesiumPpm = Magnesium.Read(entries),
        OrganicMatter = Organic.ReadShare(entries),
        CationExchange = Exchange.Read(entries),
        SaltsDsPerM = Salts.Read(entries),
        TestDate = Tested.Read(entries),
    };

    private static IReadOnlyList<UnitChoice<double>> Units(double share, string element, string oxide) =>
    [
        new("ppm", $"ppm {element}", UnitSystem.UsCustomary, v => v, v => v),
        new("mgkg", $"mg/kg {element}", UnitSystem.Metric, v => v, v => v),
        new("lbA", $"lb per acre {element}", UnitSystem.UsCustomary, SoilTestUnits.PpmFromPoundsPerAcre, v => v * SoilTestUnits.PoundsPerAcrePerPpm),
        new("ppmOx", $"ppm {oxide}", UnitSystem.UsCustomary, v => v * share, v => v / share),
        new("lbAOx", $"lb per acre {oxide}", UnitSystem.UsCustomary, v => SoilTestUnits.PpmFromPoundsPerAcre(v) * share, v => v / share * SoilTestUnits.PoundsPerAcrePerPpm),
    ];
}
