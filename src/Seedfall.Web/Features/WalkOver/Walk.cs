using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Features.WalkOver.Steps;

namespace Seedfall.Web.Features.WalkOver;

/// <summary>The steps of the walk with their screens, in the order one walks.</summary>
internal static class Walk
{
    public static IReadOnlyList<StepLeaf> Steps { get; } =
    [
        new ArriveStep(), SignStep.FromAfar(), new QuadratStep(0), new TugStep(), new LiftStep(), DepthStep.Push(), DepthStep.Thatch(), new MoistureStep(), SignStep.UpClose(), new WeedStep(),
    ];

    public static StepLeaf Of(WalkStep step) => Steps.First(s => s.Step == step);

    /// <summary>Null where there is no such step.</summary>
    public static StepLeaf? Find(string id) => Steps.FirstOrDefault(s => s.Id == id);

    /// <summary>The step after this one; null after the last.</summary>
    public static StepLeaf? After(StepLeaf step) => Steps.SkipWhile(s => s.Step != step.Step).Skip(1).FirstOrDefault();

    /// <summary>Number of the step in the walk, from 1.</summary>
    public static int NumberOf(StepLeaf step) => Steps.TakeWhile(s => s.Step != step.Step).Count() + 1;

    /// <summary>How many steps were taken.</summary>
    public static int Taken(PatchSurvey? survey) => survey is null ? 0 : WalkSteps.Order.Count(s => WalkSteps.Taken(s, survey));

    /// <summary>The first step not taken; null where all were.</summary>
    public static StepLeaf? FirstOpen(PatchSurvey? survey) => Steps.FirstOrDefault(s => !WalkSteps.Taken(s.Step, survey ?? new()));

    public static string Address(string lawnId) => $"/lawns/{lawnId}/walk-over";

    public static string Address(string lawnId, string patchId, StepLeaf step) => $"{Address(lawnId)}/{patchId}/{step.Id}";

    public static string SumUp(string lawnId, string patchId) => $"{Address(lawnId)}/{patchId}/sum-up";
}
