using CsCheck;
using NJsonSchema;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Lawns;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Tests.Lawns;

public sealed class LawnFileRoundTripTests
{
    private static readonly Gen<Lawn> AnyLawn = AnyRecord.Gen<Lawn>();

    [Fact]
    public void Reading_what_was_written_gives_the_same_lawn_to_the_last_bit() =>
        AnyLawn.Sample(
            lawn =>
            {
                var bytes = LawnFile.Write(lawn);
                var problems = new ProblemList("lawn.json");
                Assert.True(LawnFormat.One.TryRead(JsonTree.Read(bytes, problems)!, problems, out var read), string.Join('\n', problems.All));
                Assert.Null(Same.Difference(lawn, read));
                Assert.Equal(bytes, LawnFile.Write(read));
            },
            iter: 400);

    [Fact]
    public async Task Every_written_lawn_is_valid_under_the_published_schema()
    {
        var schema = await JsonSchema.FromJsonAsync(LawnFile.Schema(), TestContext.Current.CancellationToken);
        AnyLawn.Sample(lawn => Assert.Empty(schema.Validate(System.Text.Encoding.UTF8.GetString(LawnFile.Write(lawn)))), iter: 60, threads: 1);
    }

    [Fact]
    public async Task The_schema_refuses_what_the_reader_refuses()
    {
        var schema = await JsonSchema.FromJsonAsync(LawnFile.Schema(), TestContext.Current.CancellationToken);
        Assert.NotEmpty(schema.Validate(LawnText.Least.Replace("\"2400 sq ft\"", "2400", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(LawnText.Least.Replace("\"name\"", "\"nam\"", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(LawnText.Least.Replace("tall-fescue", "tall-grass", StringComparison.Ordinal)));
        Assert.Empty(schema.Validate(LawnText.Least));
    }

    [Fact]
    public void The_published_schema_is_the_one_the_code_makes()
    {
        var path = Repository.PathOf("docs", "schema", "lawn.schema.json");
        if (Repository.AcceptGolden)
        {
            File.WriteAllText(path, LawnFile.Schema());
        }

        Assert.Equal(File.ReadAllText(path), LawnFile.Schema());
    }
}
