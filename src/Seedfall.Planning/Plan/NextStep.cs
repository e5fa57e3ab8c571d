using Seedfall.Engine.Workings;
using Seedfall.Planning.Judgment;

namespace Seedfall.Planning.Plan;

/// <summary>The one thing to do next.</summary>
internal static class NextStep
{
    /// <summary>The first task neither done nor over on the day the plan is looked at.</summary>
    internal static NextAction Of(IReadOnlyList<PlanTask> tasks, DateOnly? today, Verdict verdict)
    {
        var task = tasks.FirstOrDefault(t => t.Done is null && (today is null || t.LastDate >= today));
        return task is null
            ? new NextAction($"The season's work is done. {verdict.Sentence}", null, null)
            : new NextAction(Sentence(task, today), task.Date, task.Id);
    }

    private static string Sentence(PlanTask task, DateOnly? today) => task switch
    {
        _ when today is { } day && task.Date <= day && task.LastDate > task.Date => $"Now, until {FigureText.DateText(task.LastDate)}: {task.Title}.",
        _ when today == task.Date => $"Today: {task.Title}.",
        _ when task.LastDate > task.Date => $"Between {FigureText.DateText(task.Date)} and {FigureText.DateText(task.LastDate)}: {task.Title}.",
        _ => $"On {FigureText.DateText(task.Date)}: {task.Title}.",
    };
}
