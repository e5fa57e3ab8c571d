using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Judgment.Survey.Causes;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>A checklist of signs, from afar or up close.</summary>
internal sealed class SignStep : StepLeaf
{
    private readonly TicksField<Sign> _signs;
    private readonly bool _afar;

    private SignStep(WalkStep step, string id, string title, string why)
        : base(step, id, title, why)
    {
        _afar = step == WalkStep.FromAfar;
        _signs = new("signs", "What do you see?", SurveyWords.Signs(step)) { Hint = "Tick all that fit. Saving with nothing ticked says: looked, and saw none of these." };
    }

    public override string Blank => "Looked, none of these seen";

    public static SignStep FromAfar() => new(WalkStep.FromAfar, "from-afar", "Look from afar", "Walk around it once, then look across it low against the light. The pattern says most.");

    public static SignStep UpClose() => new(WalkStep.UpClose, "up-close", "Look up close", "Kneel at the edge of the damage, where it is freshest. Look at blades, crowns, roots and soil.");

    public override string Gist(PatchSurvey survey, UnitSystem system) => Mine(survey) is { Count: > 0 } seen
        ? string.Join("; ", SurveyWords.Signs(Step).Where(a => seen.Contains(a.Item1)).Select(a => a.Item3))
        : Looked(survey) ? Blank : "";

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn) => [new(Title, [_signs]) { Bare = true }];

    protected override void Fill(PatchSurvey survey, Entries entries) => _signs.Fill(entries, survey.Signs);

    protected override PatchSurvey Read(PatchSurvey before, Entries entries) =>
        Marked(before with { Signs = Kept(before, _signs.Read(entries, Mine(before))) }, true);

    protected override PatchSurvey Clear(PatchSurvey survey) => Marked(survey with { Signs = Kept(survey, []) }, false);

    private List<Sign> Mine(PatchSurvey survey) => [.. survey.Signs.Where(s => SignFindings.StepOf(s) == Step)];

    private Sign[] Kept(PatchSurvey survey, IReadOnlyList<Sign> mine)
    {
        var kept = mine.ToHashSet();
        return [.. survey.Signs.Where(s => SignFindings.StepOf(s) != Step || kept.Contains(s)), .. mine.Where(s => !survey.Signs.Contains(s))];
    }

    private bool Looked(PatchSurvey survey) => _afar ? survey.LookedFromAfar : survey.LookedUpClose;

    private PatchSurvey Marked(PatchSurvey survey, bool looked) => _afar ? survey with { LookedFromAfar = looked } : survey with { LookedUpClose = looked };
}
