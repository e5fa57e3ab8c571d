using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Rules;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver;

/// <summary>One step of the walk over one patch: a leaf whose item is the patch.</summary>
/// <param name="step">The step.</param>
/// <param name="id">Stable id in the address.</param>
/// <param name="title">Heading.</param>
/// <param name="why">What to do, in one or two sentences.</param>
public abstract class StepLeaf(WalkStep step, string id, string title, string why) : Leaf(id, title, why)
{
    public WalkStep Step { get; } = step;

    /// <summary>What saving says where nothing is filled in; null where it says nothing.</summary>
    public virtual string? Blank => null;

    public sealed override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system) => [.. lawn.Patches.Select(p => Gist(p.Survey ?? new(), system))];

    public sealed override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) => Groups(lawn);

    public sealed override void Fill(Lawn lawn, int item, Entries entries) => Fill(lawn.Patches[item].Survey ?? new(), entries);

    public sealed override Lawn Apply(Lawn lawn, int item, Entries entries) => With(lawn, item, Read(lawn.Patches[item].Survey ?? new(), entries));

    /// <summary>The lawn as if this step had not been taken.</summary>
    public sealed override Lawn Remove(Lawn lawn, int item) => With(lawn, item, Clear(lawn.Patches[item].Survey ?? new()));

    /// <summary>What was found, in one line; empty where the step was not taken.</summary>
    public abstract string Gist(PatchSurvey survey, UnitSystem system);

    protected abstract IReadOnlyList<FieldGroup> Groups(Lawn lawn);

    protected abstract void Fill(PatchSurvey survey, Entries entries);

    protected abstract PatchSurvey Read(PatchSurvey before, Entries entries);

    protected abstract PatchSurvey Clear(PatchSurvey survey);

    private static Lawn With(Lawn lawn, int item, PatchSurvey survey) =>
        lawn with { Patches = [.. lawn.Patches.Select((p, i) => i == item ? p with { Survey = survey } : p)] };
}
