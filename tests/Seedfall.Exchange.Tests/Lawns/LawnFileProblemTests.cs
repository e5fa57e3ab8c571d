using System.Text;
using Seedfall.Exchange.Lawns;
using Seedfall.Exchange.Tests.Support;

namespace Seedfall.Exchange.Tests.Lawns;

public sealed class LawnFileProblemTests
{
    [Fact]
    public void The_least_file_is_read()
    {
        var lawn = Read(LawnText.Least).Lawn;
        Assert.NotNull(lawn);
        Assert.Equal(2400.0 * 0.09290304, ((Planning.Ground.PatchShape.Typed)lawn.Patches[0].Shape).Area.SquareMeters, 9);
        Assert.Equal(860.0 * 0.3048, lawn.Place.ElevationM, 9);
        Assert.Null(lawn.Soil);
        Assert.Empty(lawn.SeedLots);
    }

    [Theory]
    [InlineData("\"2400 sq ft\"", "2400", 7, "patches[0].shape.area", "with its unit", "2400")]
    [InlineData("\"2400 sq ft\"", "\"2400\"", 7, "patches[0].shape.area", "with its unit", "\"2400\"")]
    [InlineData("\"2400 sq ft\"", "\"2400 gal\"", 7, "patches[0].shape.area", "sq ft, acre, ha, m2", "\"2400 gal\"")]
    [InlineData("\"2400 sq ft\"", "\"-2400 sq ft\"", 7, "patches[0].shape.area", "not negative", "\"-2400 sq ft\"")]
    [InlineData("\"2400 sq ft\"", "\"2,400 sq ft\"", 7, "patches[0].shape.area", "with its unit", "\"2,400 sq ft\"")]
    [InlineData("\"2400 sq ft\"", "\"NaN sq ft\"", 7, "patches[0].shape.area", "with its unit", "\"NaN sq ft\"")]
    [InlineData("\"2400 sq ft\"", "\"1e999 sq ft\"", 7, "patches[0].shape.area", "with its unit", "\"1e999 sq ft\"")]
    [InlineData("43.1", "143.1", 5, "place.latitude", "a number from -90 to 90", "143.1")]
    [InlineData("43.1", "1e999", 5, "place.latitude", "a number from -90 to 90", "1e999")]
    [InlineData("43.1", "\"43.1\"", 5, "place.latitude", "a number from -90 to 90", "\"43.1\"")]
    [InlineData("\"860 ft\"", "\"860\"", 5, "place.elevation", "an elevation with its unit", "\"860\"")]
    [InlineData("\"tall-fescue\"", "\"TallFescue\"", 7, "patches[0].grasses[0]", "one of kentucky-bluegrass", "\"TallFescue\"")]
    [InlineData("\"tall-fescue\"", "", 7, "patches[0].grasses", "a list of at least 1", "0")]
    [InlineData("\"grasses\"", "\"livingCover\": \"120 %\", \"grasses\"", 7, "patches[0].livingCover", "a percentage with its unit", "\"120 %\"")]
    [InlineData("\"grasses\"", "\"livingCover\": 0.4, \"grasses\"", 7, "patches[0].livingCover", "a percentage with its unit", "0.4")]
    [InlineData("\"grasses\"", "\"livngCover\": \"40 %\", \"grasses\"", 7, "patches[0].livngCover", "\"livingCover\"", "the unknown field \"livngCover\"")]
    [InlineData("\"grasses\"", "\"brand\": \"x\", \"grasses\"", 7, "patches[0].brand", "one of id, name, shape", "the unknown field \"brand\"")]
    [InlineData("\"name\": \"Front\"", "\"name\": \"Front\", \"name\": \"Back\"", 7, "patches[0].name", "each field once", "the field a second time")]
    [InlineData("\"name\": \"Front\", ", "", 7, "patches[0]", "the field \"name\"", "an object without it")]
    [InlineData("\"name\": \"Front\"", "\"name\": null", 7, "patches[0].name", "text of 1 to 2,000 characters", "null")]
    [InlineData("\"id\": \"front\"", "\"id\": \"Front Lawn\"", 7, "patches[0].id", "an id of 1 to 64", "\"Front Lawn\"")]
    [InlineData("seedfall-lawn/1", "seedfall-lawn/2", 2, "format", "\"seedfall-lawn/1\"", "\"seedfall-lawn/2\"")]
    [InlineData("{ \"area\": \"2400 sq ft\" }", "{ }", 7, "patches[0].shape", "an object with one field out of area, rectangle", "0 fields")]
    [InlineData("{ \"area\": \"2400 sq ft\" }", "{ \"oval\": \"2400 sq ft\" }", 7, "patches[0].shape.oval", "one of area, rectangle", "the unknown field \"oval\"")]
    public void A_fault_is_refused_with_place_and_expectation(string was, string becomes, int line, string path, string expected, string found)
    {
        var text = LawnText.Least.Replace(was, becomes, StringComparison.Ordinal);
        Assert.NotEqual(LawnText.Least, text);
        var result = Read(text);
        Assert.Null(result.Lawn);
        var problem = Assert.Single(result.Problems);
        Assert.Equal(line, problem.Line);
        Assert.Equal(path, problem.Path);
        Assert.Contains(expected, problem.Expected);
        Assert.Equal(found, problem.Found);
        Assert.True(problem.Column > 1);
        Assert.DoesNotContain('\n', problem.ToString());
    }

    [Fact]
    public void What_no_lawn_can_have_is_told_with_its_place_in_the_file()
    {
        var result = Read(LawnText.Least.Replace("2400 sq ft", "0 sq ft", StringComparison.Ordinal));
        var problem = Assert.Single(result.Problems);
        Assert.Equal(7, problem.Line);
        Assert.StartsWith("patches[0].shape", problem.Path, StringComparison.Ordinal);
        Assert.True(problem.Column > 30);
    }

    [Theory]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("-Infinity")]
    [InlineData("043.1")]
    [InlineData("43.1,")]
    [InlineData("/* here */ 43.1")]
    public void What_is_no_json_is_refused_where_it_stands(string number)
    {
        var result = Read(LawnText.Least.Replace("43.1", number, StringComparison.Ordinal).Replace("43.1,,", "43.1,,", StringComparison.Ordinal));
        var problem = Assert.Single(result.Problems);
        Assert.Equal(5, problem.Line);
        Assert.StartsWith("JSON (RFC 8259", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_faults_are_all_told_at_once()
    {
        var result = Read(LawnText.Least
            .Replace("43.1", "943.1", StringComparison.Ordinal)
            .Replace("\"2400 sq ft\"", "7", StringComparison.Ordinal)
            .Replace("tall-fescue", "moss", StringComparison.Ordinal));
        Assert.Equal(["place.latitude", "patches[0].shape.area", "patches[0].grasses[0]"], result.Problems.Select(p => p.Path));
    }

    [Fact]
    public void Nesting_beyond_32_levels_is_refused()
    {
        var result = Read(string.Concat(Enumerable.Repeat("[", 40)) + string.Concat(Enumerable.Repeat("]", 40)));
        Assert.Contains("at most 32 levels", Assert.Single(result.Problems).Expected);
    }

    [Theory]
    [InlineData("", "the end of the file")]
    [InlineData("   \n ", "the end of the file")]
    public void An_empty_file_is_refused(string text, string found)
    {
        var problem = Assert.Single(Read(text).Problems);
        Assert.Equal("a JSON object", problem.Expected);
        Assert.Equal(found, problem.Found);
    }

    [Fact]
    public void A_truncated_file_is_refused_at_every_length()
    {
        var bytes = Encoding.UTF8.GetBytes(LawnText.Least);
        for (var length = 0; length < bytes.Length; length++)
        {
            Assert.False(LawnFile.Read(bytes.AsSpan(0, length), "lawn.json").IsRead);
        }
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
    {
        var bytes = Encoding.UTF8.GetBytes(LawnText.Least);
        bytes[Encoding.UTF8.GetString(bytes).IndexOf("corner lawn", StringComparison.Ordinal)] = 0xFF;
        Assert.False(LawnFile.Read(bytes, "lawn.json").IsRead);
        Assert.False(LawnFile.Read([0x1f, 0x8b, 0x08, 0x00], "lawn.json").IsRead);
    }

    [Fact]
    public void A_byte_order_mark_is_taken() =>
        Assert.True(LawnFile.Read([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(LawnText.Least)], "lawn.json").IsRead);

    private static LawnReadResult Read(string text) => LawnFile.Read(Encoding.UTF8.GetBytes(text), "lawn.json");
}
