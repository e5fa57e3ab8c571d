using System.Xml.Linq;

namespace Seedfall.Checks.Architecture;

/// <summary>The arrows of the house, read from the project files: what may reference what.</summary>
public sealed class ArrowTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Seedfall.Engine"] = [],
        ["Seedfall.Planning"] = ["Seedfall.Engine"],
        ["Seedfall.Weather"] = ["Seedfall.Engine"],
        ["Seedfall.Photos"] = [],
        ["Seedfall.Exchange"] = ["Seedfall.Engine", "Seedfall.Planning", "Seedfall.Weather"],
        ["Seedfall.Web"] = ["Seedfall.Engine", "Seedfall.Planning", "Seedfall.Weather", "Seedfall.Photos", "Seedfall.Exchange"],
        ["Seedfall.Cli"] = ["Seedfall.Engine", "Seedfall.Planning", "Seedfall.Weather", "Seedfall.Photos", "Seedfall.Exchange"],
    };

    private static readonly string[] PackagesOfThePureCore = ["Microsoft.CodeAnalysis.BannedApiAnalyzers", "NetTopologySuite", "Google.OrTools"];

    [Fact]
    public void EveryProjectReferencesOnlyWhatItsArrowsAllow()
    {
        foreach (var (name, project) in Projects())
        {
            var references = project.Descendants("ProjectReference").Select(e => Path.GetFileNameWithoutExtension(e.Attribute("Include")!.Value));
            Assert.Empty(references.Except(Allowed[name]).Select(reference => $"{name} -> {reference}"));
        }
    }

    [Fact]
    public void ThePureCoreHoldsNoPackages()
    {
        foreach (var (name, project) in Projects().Where(p => p.Name is "Seedfall.Engine" or "Seedfall.Planning"))
        {
            var packages = project.Descendants("PackageReference").Select(e => e.Attribute("Include")!.Value);
            Assert.Empty(packages.Except(PackagesOfThePureCore).Select(package => $"{name} -> {package}"));
        }
    }

    [Fact]
    public void OnlyPhotosHoldsAnImagePackage()
    {
        var holders = Projects()
            .Where(p => p.Project.Descendants("PackageReference").Any(e => e.Attribute("Include")!.Value is var id && (id.StartsWith("SkiaSharp", StringComparison.Ordinal) || id.StartsWith("Magick", StringComparison.Ordinal))))
            .Select(p => p.Name);
        Assert.Equal(["Seedfall.Photos"], holders);
    }

    [Fact]
    public void NoTypeIsNamedForNothing()
    {
        string[] empty = ["Manager", "Helper", "Helpers", "Util", "Utils", "Service", "Dto", "Impl"];
        var named = Checkout.Sources("src", "*.cs").Select(path => Path.GetFileNameWithoutExtension(path)).Where(name => empty.Any(end => name.EndsWith(end, StringComparison.Ordinal)));
        Assert.Empty(named);
    }

    private static IEnumerable<(string Name, XDocument Project)> Projects() =>
        Checkout.Sources("src", "*.csproj").Select(path => (Path.GetFileNameWithoutExtension(path), XDocument.Load(path)));
}
