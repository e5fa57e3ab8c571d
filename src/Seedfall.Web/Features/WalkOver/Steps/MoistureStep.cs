using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>Soil moisture by feel.</summary>
internal sealed class MoistureStep() : StepLeaf(WalkStep.Moisture, "moisture", "Feel the soil", "Take soil from a hand’s breadth down, squeeze it in the palm, and let a drop of water fall on a dry piece.")
{
    private static readonly ChoiceField<SoilFeel> Feel = new("feel", "How does it feel?", SurveyWords.Feels) { Blank = "Not felt" };
    private static readonly QuantityField<Depth> Down = new("down", "Felt at", UnitChoices.Depth, Depth.Zero, Depth.FromInches(24.0)) { Hint = "3 to 4 in (8 to 10 cm) is where roots drink." };
    private static readonly ChoiceField<bool> Drop = new("drop", "A drop on a dry piece, after 5 seconds", SurveyWords.Drops) { Blank = "Not tried" };

    public override string Gist(PatchSurvey survey, UnitSystem system)
    {
        IEnumerable<string?> parts =
        [
            survey.Moisture is { } feel ? SurveyWords.Feels.Words(feel).Split(':')[0] : null,
            survey.MoistureDepth is { } depth ? $"at {WalkText.Depth(depth, system)}" : null,
            survey.DropStood is { } stood ? stood ? "a drop stood on top" : "a drop sank in" : null,
        ];
        return string.Join(", ", parts.OfType<string>());
    }

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn) => [new("Soil", [Feel, Down, Drop]) { Bare = true }];

    protected override void Fill(PatchSurvey survey, Entries entries)
    {
        Feel.Fill(entries, survey.Moisture);
        Down.Fill(entries, survey.MoistureDepth);
        Drop.Fill(entries, survey.DropStood);
    }

    protected override PatchSurvey Read(PatchSurvey before, Entries entries) => before with { Moisture = Feel.Read(entries), MoistureDepth = Down.Read(entries), DropStood = Drop.Read(entries) };

    protected override PatchSurvey Clear(PatchSurvey survey) => survey with { Moisture = null, MoistureDepth = null, DropStood = null };
}
