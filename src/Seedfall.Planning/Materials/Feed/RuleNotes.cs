using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The rule pack's own warnings as lines on the plan.</summary>
internal static class RuleNotes
{
    internal static IEnumerable<Advice> For(Lawn lawn, RulePack pack)
    {
        var (source, sureness) = (pack.Phosphorus.Source, pack.Phosphorus.Sureness);
        for (var i = 0; i < pack.Notes.Count; i++)
        {
            yield return new($"rules.note.{i + 1}", pack.Notes[i], source, sureness);
        }

        if (pack.LawnFlag is { } flag)
        {
            yield return new("rules.posting", flag.Sentence, flag.Source, flag.Sureness);
        }

        if (pack.LicenseForHire && lawn.AppliedForHire != false)
        {
            yield return new("rules.license", lawn.AppliedForHire == true
                ? "Applied for hire: the applicator's license for this state must be in hand before anything goes on."
                : "Whoever is paid to apply needs a license in most states: say whether this work is for hire.", Worked.Practice, Sureness.CommonPractice);
        }
    }
}
