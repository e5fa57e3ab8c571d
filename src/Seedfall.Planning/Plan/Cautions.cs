namespace Seedfall.Planning.Plan;

/// <summary>The usual cautions, in our words. They defer to the label, local code and licensed practice.</summary>
public static class Cautions
{
    public const string LabelId = "caution.label";
    public const string SprayId = "caution.spray";
    public const string MixId = "caution.mix";
    public const string FertilizerId = "caution.fertilizer";
    public const string HireId = "caution.hire";
    public const string MachineId = "caution.machine";
    public const string WeighId = "caution.weigh";

    /// <summary>The label stands above this plan.</summary>
    public static Caution Label { get; } = new(LabelId, "The label is the law",
    [
        "Read the whole label of every product before buying, before mixing and before applying, and follow it where it differs from this plan.",
        "Wear the protective clothing the label names; keep the label and the number of the poison center at hand.",
        "State and town rules may be stricter than the label. When in doubt ask the state's pesticide office or a licensed applicator.",
    ]);

    /// <summary>Where something is sprayed.</summary>
    public static Caution Spray { get; } = new(SprayId, "Spraying",
    [
        "Spray only in wind of 5 mph or less at the nozzle, never in still air at dawn or dusk when fog or smoke hangs, and never above the label's wind.",
        "Keep spray off water, drains, beds, vegetables, neighbors' ground and people; point the nozzle away from you and begin at the downwind edge.",
        "Keep people and pets off until the spray has dried, or longer where the label says so.",
        "Do not spray before rain the label warns of; wash hands, face and clothing afterwards, clothing apart from other washing.",
    ]);

    /// <summary>Where a tank is mixed.</summary>
    public static Caution Mix { get; } = new(MixId, "Mixing",
    [
        "Mix outdoors, away from wells and drains, with gloves and eye protection; never leave a tank or an open jug alone.",
        "Keep an air gap between the hose and the tank so that nothing is drawn back into the supply.",
        "Mix no more than today needs. Put rinse water on the treated lawn within the label's rate; never into a drain.",
        "Lock products away in their own containers, out of reach of children.",
    ]);

    /// <summary>Where a dry product is weighed out.</summary>
    public static Caution Weigh { get; } = new(WeighId, "Weighing powder and granules",
    [
        "Weigh outdoors with the wind at your back and low, or in a room aired to the outside: never in a kitchen, a vehicle or a draft.",
        "Dust goes into lungs and eyes: wear the mask or respirator the label names, eye protection and gloves; open the bag slowly and close it at once.",
        "The scale, its bowl and the spoon serve for pesticides only from then on and are locked away with them. A folded paper goes into the tank or the bin the label names, never back.",
        "Put the dose into water at once. What was spilled is taken up dry and used on the lawn within the label's rate, never hosed away.",
    ]);

    /// <summary>Where fertilizer is spread.</summary>
    public static Caution Fertilizer { get; } = new(FertilizerId, "Fertilizing",
    [
        "Keep fertilizer off paving and out of water; sweep back onto the lawn what lands outside it.",
        "Do not spread before heavy rain or on frozen ground, and keep the distance from water that local rules ask.",
    ]);

    /// <summary>Where somebody is paid to apply.</summary>
    public static Caution Hire { get; } = new(HireId, "Applying for pay",
    [
        "Applying pesticides, and in some states fertilizer, on somebody else's lawn for pay usually needs a license, records and a posted notice. Check with the state before the first job.",
    ]);

    /// <summary>Where machines run.</summary>
    public static Caution Machine { get; } = new(MachineId, "Machines",
    [
        "Wear closed shoes and eye and hearing protection around mowers, rakes and slit-seeders; mark sprinkler heads, cables and invisible fences first.",
        "Stop the engine before clearing a blocked machine.",
    ]);

    /// <summary>All of them, in the order a page shows them.</summary>
    public static IReadOnlyList<Caution> All { get; } = [Label, Mix, Weigh, Spray, Fertilizer, Machine, Hire];
}
