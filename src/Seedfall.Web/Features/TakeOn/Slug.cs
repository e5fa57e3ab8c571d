using System.Globalization;
using System.Text;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>Short stable ids from names: lower-case letters, digits and hyphens.</summary>
internal static class Slug
{
    private const int Longest = 40;

    /// <summary>For example <c>under-the-maple</c>; <c>lawn</c> where the name holds no letter or digit of the alphabet.</summary>
    public static string From(string name)
    {
        var slug = new StringBuilder();
        foreach (var c in name.Normalize(NormalizationForm.FormD))
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                slug.Append(char.ToLowerInvariant(c));
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark && slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }

            if (slug.Length == Longest)
            {
                break;
            }
        }

        var trimmed = slug.ToString().Trim('-');
        return trimmed.Length == 0 ? "lawn" : trimmed;
    }

    /// <summary>The slug of a name with a number behind it where it is taken.</summary>
    public static string Unique(string name, IReadOnlyCollection<string> taken)
    {
        var slug = From(name);
        for (var n = 1; ; n++)
        {
            var candidate = n == 1 ? slug : string.Create(CultureInfo.InvariantCulture, $"{slug}-{n}");
            if (!taken.Contains(candidate))
            {
                return candidate;
            }
        }
    }
}
