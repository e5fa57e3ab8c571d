using System.Text;
using CsCheck;
using NJsonSchema;
using Seedfall.Exchange.Plans;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Tests.Plans;

public sealed class PlanJsonTests
{
    private static readonly Gen<RecoveryPlan> AnyPlan = AnyRecord.Gen<RecoveryPlan>();

    [Fact]
    public void Reading_what_was_written_gives_the_same_plan() =>
        AnyPlan.Sample(
            plan =>
            {
                var bytes = PlanJson.Write(plan);
                var read = PlanJson.Read(bytes, "plan.json");
                Assert.True(read.IsRead, string.Join('\n', read.Problems));
                Assert.Null(Same.Difference(plan, read.Plan));
                Assert.Equal(bytes, PlanJson.Write(read.Plan));
            },
            iter: 60);

    [Fact]
    public async Task Every_plan_is_valid_under_the_published_schema()
    {
        var schema = await JsonSchema.FromJsonAsync(PlanJson.Schema(), TestContext.Current.CancellationToken);
        AnyPlan.Sample(plan => Assert.Empty(schema.Validate(Encoding.UTF8.GetString(PlanJson.Write(plan)))), iter: 10, threads: 1);
    }

    [Fact]
    public void A_figure_whose_shown_text_was_changed_is_refused()
    {
        var text = Encoding.UTF8.GetString(PlanJson.Write(AnyRecord.One<RecoveryPlan>(7)));
        var at = text.IndexOf("\"us\": \"", StringComparison.Ordinal) + 7;
        var changed = text.Insert(at, "9");
        var result = PlanJson.Read(Encoding.UTF8.GetBytes(changed), "plan.json");
        Assert.False(result.IsRead);
        var problem = Assert.Single(result.Problems);
        Assert.EndsWith(".us", problem.Path, StringComparison.Ordinal);
        Assert.Contains("which follows from the other fields", problem.Expected);
    }

    [Fact]
    public void The_published_schema_is_the_one_the_code_makes()
    {
        var path = Repository.PathOf("docs", "schema", "plan.schema.json");
        if (Repository.AcceptGolden)
        {
            File.WriteAllText(path, PlanJson.Schema());
        }

        Assert.Equal(File.ReadAllText(path), PlanJson.Schema());
    }
}
