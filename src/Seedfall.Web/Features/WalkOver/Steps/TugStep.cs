using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>The tug test.</summary>
internal sealed class TugStep() : StepLeaf(WalkStep.Tug, "tug", "Tug brown tufts", "Tug five or more brown tufts in different places, with the grip of a handshake, and count what they do.")
{
    private static readonly NumberField Held = new("held", "Held fast", 0.0, 100.0) { Whole = true, Hint = "The crown at the base is firm and white or cream." };
    private static readonly NumberField Lifted = new("lifted", "Came up like a carpet", 0.0, 100.0) { Whole = true, Hint = "The roots are gone." };
    private static readonly NumberField Pulled = new("pulled", "Pulled out at the crown", 0.0, 100.0) { Whole = true, Hint = "The base is dry, brown or rotten." };

    public override string Gist(PatchSurvey survey, UnitSystem system) => survey.Tugs is not { Total: > 0 } tugs ? "" : $"{tugs.Held} held, {tugs.Lifted} lifted, {tugs.PulledOut} pulled out"
        + (SurveyedPatch.Dormant(survey) switch { true => ": dormant", false => ": dead", null => tugs.Total < SurveyedPatch.FewestTufts ? ": too few to say" : ": they do not settle it" });

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn) => [new("Tufts", [Held, Lifted, Pulled]) { Bare = true }];

    protected override void Fill(PatchSurvey survey, Entries entries)
    {
        Held.Fill(entries, survey.Tugs?.Held);
        Lifted.Fill(entries, survey.Tugs?.Lifted);
        Pulled.Fill(entries, survey.Tugs?.PulledOut);
    }

    protected override PatchSurvey Read(PatchSurvey before, Entries entries)
    {
        var (held, lifted, pulled) = (Held.ReadWhole(entries), Lifted.ReadWhole(entries), Pulled.ReadWhole(entries));
        return before with { Tugs = held is null && lifted is null && pulled is null ? null : new TugTest(held ?? 0, lifted ?? 0, pulled ?? 0) };
    }

    protected override PatchSurvey Clear(PatchSurvey survey) => survey with { Tugs = null };
}
