namespace Seedfall.Planning.Judgment;

/// <summary>The lines a lawn is judged by, each with its source.</summary>
internal static class Thresholds
{
    /// <summary>Living turf below this share of the ground: start over.</summary>
    internal const double LivingShare = 0.50;

    /// <summary>Below this some would already renovate.</summary>
    internal const double NearLivingShare = 0.70;

    internal const string LivingSource = "UMN Extension: renovate where 30 to 50 % is dead or weeds; older rule 40 to 50 %. Seedfall takes 50 %";

    /// <summary>Weeds above this share: start over.</summary>
    internal const double WeedShare = 0.50;

    internal const string WeedSource = "University of Maryland Extension: above 50 % weeds, complete renovation";

    /// <summary>Thatch above this must go first, inches.</summary>
    internal const double ThatchInches = 0.75;

    /// <summary>Thatch above this is worth opening up, inches.</summary>
    internal const double ThatchNearInches = 0.50;

    internal const string ThatchSource = "UMN Extension: above 3/4 in excessive; K-State: 3/4 in or more usually stripped; above 1/2 in aerate or dethatch common practice";

    /// <summary>Living grubs per square foot that thin, stressed turf does not outgrow.</summary>
    internal const double Grubs = 5.0;

    internal const string GrubSource = "Utah: May and June beetles 3 to 5, masked chafers 8 to 10 a square foot; Illinois about 10; stressed turf bears half (University of Arkansas). Seedfall takes 5";

    /// <summary>Least hours of sun any cool-season lawn grass is worth seeding for.</summary>
    internal const double SunHours = 3.0;

    internal const string SunSource = "Penn State Extension: fine fescues from about 3 hours of sun; the other grasses from the species table";

    /// <summary>Chance of a stand below which a chosen day is refused.</summary>
    internal const double Chance = 0.30;

    internal const string ChanceSource = "chance curve of this plan; the line of 30 % is Seedfall's own";

    /// <summary>Days to water a test square before dormant turf is counted dead.</summary>
    internal const int DormantDays = 14;

    internal const string DormantSource = "University of Wisconsin: green-up two weeks and more after water returns; water a test square 10 to 14 days first, common practice";
}
