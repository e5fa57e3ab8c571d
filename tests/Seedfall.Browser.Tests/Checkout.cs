namespace Seedfall.Browser.Tests;

/// <summary>Places in the checkout the tests run from.</summary>
internal static class Checkout
{
    public static string Root { get; } = Find();

    public static string Web => Path.Combine(Root, "src", "Seedfall.Web");

    public static string Axe
    {
        get
        {
            var path = Path.Combine(Root, "node_modules", "axe-core", "axe.min.js");
            return File.Exists(path) ? path : throw new InvalidOperationException("the accessibility checker is missing: run ./dev setup (npm ci) first");
        }
    }

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Seedfall.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("the tests must run from a checkout: no Seedfall.slnx above " + AppContext.BaseDirectory);
    }
}
