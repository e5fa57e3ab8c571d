using Seedfall.Engine.Soil;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>The soil and its test.</summary>
internal sealed class SoilLeaf() : Leaf("soil", "Soil", "Texture sets how deep water goes and how long it stays; a test decides phosphorus and lime.")
{
    private static readonly ChoiceField<SoilTexture> Texture = new("texture", "Texture", Answers.Textures) { Hint = "Rub it wet: gritty is sand, floury is silt, sticky is clay." };
    private static readonly NumberField Ph = new("ph", "pH in water", 3.0, 10.0);
    private static readonly NumberField Phosphorus = new("phosphorus", "Phosphorus", 0.0, 2000.0, "ppm") { Hint = "As the element, by Mehlich-3 unless the soil report page says otherwise." };
    private static readonly NumberField Potassium = new("potassium", "Potassium", 0.0, 5000.0, "ppm");
    private static readonly NumberField Organic = new("organic", "Organic matter", 0.0, 100.0, "%");
    private static readonly DateField Tested = new("tested", "Date of the test") { Hint = "Phosphorus rules ask how old the test is." };

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
        [new("By hand", [Texture]), new("By soil test", [Ph, Phosphorus, Potassium, Organic, Tested])];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        if (lawn.Soil is not { } soil)
        {
            return [];
        }

        List<string> known = [];
        if (soil.Texture is { } texture)
        {
            known.Add(Answers.Textures.Words(texture));
        }

        if (soil.Ph is { } ph)
        {
            known.Add($"pH {NumberText.Write(ph)}");
        }

        known.Add(soil.PhosphorusPpm is { } p ? $"P {NumberText.Write(p)} ppm" : "no phosphorus test");
        return [string.Join(", ", known)];
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Texture.Fill(entries, lawn.Soil?.Texture);
        Ph.Fill(entries, lawn.Soil?.Ph);
        Phosphorus.Fill(entries, lawn.Soil?.PhosphorusPpm);
        Potassium.Fill(entries, lawn.Soil?.PotassiumPpm);
        Organic.FillShare(entries, lawn.Soil?.OrganicMatter);
        Tested.Fill(entries, lawn.Soil?.TestDate);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var soil = (lawn.Soil ?? new SoilFacts()) with
        {
            Texture = Texture.Read(entries),
            Ph = Ph.Read(entries),
            PhosphorusPpm = Phosphorus.Read(entries),
            PotassiumPpm = Potassium.Read(entries),
            OrganicMatter = Organic.ReadShare(entries),
            TestDate = Tested.Read(entries),
        };
        return lawn with { Soil = soil == new SoilFacts() ? null : soil };
    }
}
