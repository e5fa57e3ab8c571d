using Seedfall.Engine.Workings;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Plans;

/// <summary>Seed, feed, spray, cover and the shopping list.</summary>
internal sealed partial class PlanFormats
{
    private RecordFormat<SeedPlan> Seed { get; }

    private RecordFormat<FeedPlan> Feed { get; }

    private RecordFormat<SprayPlan> Spray { get; }

    private RecordFormat<CoverPlan> Cover { get; }

    private RecordFormat<Purchase> PurchaseFormat()
    {
        var b = new RecordFormat<BagCount>("bagCount");
        var size = b.Required("bagKilograms", Scalars.Number, x => x.BagKilograms, "");
        var count = b.Required("count", Scalars.Count, x => x.Count, "");
        var price = b.Optional("priceEach", Scalars.Money, x => x.PriceEach, "");
        b.Made(v => new BagCount(v.Get(size), v.Get(count), v.Get(price)));

        var f = new RecordFormat<Purchase>("purchase");
        var bags = f.Required("bags", new ListFormat<BagCount>(b), x => x.Bags, "");
        var bought = f.Required("bought", Figure, x => x.Bought, "");
        var left = f.Required("leftOver", Figure, x => x.LeftOver, "");
        var cost = f.Optional("cost", Figure, x => x.Cost, "");
        return f.Made(v => new Purchase(v.Get(bags), v.Get(bought), v.Get(left), v.Get(cost)));
    }

    private RecordFormat<SeedPlan> SeedFormat(RecordFormat<Purchase> purchase)
    {
        var m = new RecordFormat<MixPart>("mixPart");
        var species = m.Required("species", NamesOf<GrassSpecies>.Format, x => x.Species, "");
        var name = m.Required("name", Scalars.Words, x => x.Name, "");
        var weight = m.Required("shareByWeight", Figure, x => x.ShareByWeight, "");
        var number = m.Required("shareByCount", Figure, x => x.ShareByCount, "");
        var pure = m.Required("pureLiveSeed", Figure, x => x.PureLiveSeed, "");
        m.Made(v => new MixPart(v.Get(species), v.Get(name), v.Get(weight), v.Get(number), v.Get(pure)));

        var p = new RecordFormat<PatchSeed>("patchSeed");
        var patch = p.Required("patchId", Scalars.Id, x => x.PatchId, "");
        var target = p.Required("targetRate", Figure, x => x.TargetRate, "");
        var extension = p.Required("extensionRate", Figure, x => x.ExtensionRate, "");
        var bulk = p.Required("bulk", Figure, x => x.Bulk, "");
        var extra = p.Required("thinExtra", Figure, x => x.ThinExtra, "");
        var live = p.Required("livePerArea", Figure, x => x.LivePerArea, "");
        p.Made(v => new PatchSeed(v.Get(patch), v.Get(target), v.Get(extension), v.Get(bulk), v.Get(extra), v.Get(live)));

        var l = new RecordFormat<LotNeed>("lotNeed");
        var lotId = l.Required("id", Scalars.Words, x => x.Id, "");
        var lotName = l.Required("name", Scalars.Words, x => x.Name, "");
        var lotBulk = l.Required("bulk", Figure, x => x.Bulk, "");
        var lotBuy = l.Optional("purchase", purchase, x => x.Purchase, "");
        l.Made(v => new LotNeed(v.Get(lotId), v.Get(lotName), v.Get(lotBulk), v.Get(lotBuy)));

        var x = new RecordFormat<PatchMix>("patchMix");
        var mixId = x.Required("id", Scalars.Id, v => v.Id, "");
        var mixWords = x.Required("sentence", Scalars.Words, v => v.Sentence, "");
        var mixPatches = x.Required("patchIds", new ListFormat<string>(Scalars.Id), v => v.PatchIds, "");
        var mixParts = x.Required("parts", new ListFormat<MixPart>(m), v => v.Parts, "");
        var mixHalf = x.Required("halfPass", Figure, v => v.HalfPass, "");
        x.Made(v => new PatchMix(v.Get(mixId), v.Get(mixWords), v.Get(mixPatches), v.Get(mixParts), v.Get(mixHalf)));

        var f = new RecordFormat<SeedPlan>("seed");
        var sentence = f.Required("mixSentence", Scalars.Words, x => x.MixSentence, "");
        var mix = f.Required("mix", new ListFormat<MixPart>(m), x => x.Mix, "");
        var mixes = f.Required("mixes", new ListFormat<PatchMix>(x), v => v.Mixes, "");
        var patches = f.Required("patches", new ListFormat<PatchSeed>(p), x => x.Patches, "");
        var total = f.Required("totalBulk", Figure, x => x.TotalBulk, "");
        var half = f.Required("halfPass", Figure, x => x.HalfPass, "");
        var buy = f.Optional("purchase", purchase, x => x.Purchase, "");
        var lots = f.Required("lots", new ListFormat<LotNeed>(l), x => x.Lots, "");
        var advice = f.Required("advice", new ListFormat<Advice>(Advice), x => x.Advice, "");
        return f.Made(v => new SeedPlan(
            v.Get(sentence), v.Get(mix), v.Get(patches), v.Get(total), v.Get(half), v.Get(buy), v.Get(lots), v.Get(advice))
        {
            Mixes = v.Get(mixes),
        });
    }

    private RecordFormat<FeedPlan> FeedFormat(RecordFormat<Purchase> purchase)
    {
        var e = new RecordFormat<Feeding>("feeding");
        var id = e.Required("id", Scalars.Words, x => x.Id, "");
        var product = e.Required("productName", Scalars.Words, x => x.ProductName, "");
        var days = e.Optional("daysAfterSeedDown", Scalars.Whole(-366, 366), x => x.DaysAfterSeedDown, "");
        var date = e.Required("date", Scalars.Date, x => x.Date, "");
        var rate = e.Required("productRate", Figure, x => x.ProductRate, "");
        var n = e.Required("nitrogenRate", Figure, x => x.NitrogenRate, "");
        var p = e.Required("phosphateRate", Figure, x => x.PhosphateRate, "");
        var k = e.Required("potashRate", Figure, x => x.PotashRate, "");
        var amount = e.Required("product", Figure, x => x.Product, "");
        var reason = e.Required("reason", Scalars.Words, x => x.Reason, "");
        e.Made(v => new Feeding(
            v.Get(id), v.Get(product), v.Get(days), v.Get(rate), v.Get(n), v.Get(p), v.Get(k), v.Get(amount), v.Get(reason))
        {
            Date = v.Get(date),
        });

        var f = new RecordFormat<FeedPlan>("feed");
        var feedings = f.Required("feedings", new ListFormat<Feeding>(e), x => x.Feedings, "");
        var season = f.Required("nitrogenThisSeason", Figure, x => x.NitrogenThisSeason, "");
        var starter = f.Optional("starterPurchase", purchase, x => x.StarterPurchase, "");
        var late = f.Optional("latePurchase", purchase, x => x.LatePurchase, "");
        var advice = f.Required("advice", new ListFormat<Advice>(Advice), x => x.Advice, "");
        var recorded = f.Optional("recorded", RecordedFormat(), x => x.Recorded, "What the record of applications makes of the feedings; absent where none of the season is recorded.");
        return f.Made(v => new FeedPlan(v.Get(feedings), v.Get(season), v.Get(starter), v.Get(late), v.Get(advice)) { Recorded = v.Get(recorded) });
    }

    private RecordFormat<SprayPlan> SprayFormat()
    {
        var figures = new ListFormat<Figure>(Figure);
        var words = new ListFormat<string>(Scalars.Words);
        var p = new RecordFormat<SprayProduct>("sprayProduct");
        var name = p.Required("name", Scalars.Words, x => x.Name, "");
        var formulation = p.Required("formulation", NamesOf<FormulationClass>.Format, x => x.Formulation, "");
        var rate = p.Required("rate", Figure, x => x.Rate, "");
        var total = p.Required("total", Figure, x => x.Total, "");
        var perPatch = p.Required("perPatch", figures, x => x.PerPatch, "");
        p.Made(v => new SprayProduct(v.Get(name), v.Get(formulation), v.Get(rate), v.Get(total), v.Get(perPatch)));

        var k = new RecordFormat<TankLoad>("tankLoad");
        var number = k.Required("number", Scalars.Count, x => x.Number, "");
        var carrier = k.Required("carrier", Figure, x => x.Carrier, "");
        var into = k.Required("products", figures, x => x.Products, "");
        k.Made(v => new TankLoad(v.Get(number), v.Get(carrier), v.Get(into)));

        var t = new RecordFormat<SprayTrip>("sprayTrip");
        var id = t.Required("id", Scalars.Words, x => x.Id, "");
        var title = t.Required("title", Scalars.Words, x => x.Title, "");
        var products = t.Required("products", new ListFormat<SprayProduct>(p), x => x.Products, "");
        var carrierTotal = t.Required("carrierTotal", Figure, x => x.CarrierTotal, "");
        var tanks = t.Required("tanks", new ListFormat<TankLoad>(k), x => x.Tanks, "");
        var order = t.Required("mixingOrder", words, x => x.MixingOrder, "");
        var jar = t.Required("jarTest", words, x => x.JarTest, "");
        t.Made(v => new SprayTrip(v.Get(id), v.Get(title), v.Get(products), v.Get(carrierTotal), v.Get(tanks), v.Get(order), v.Get(jar)));

        var f = new RecordFormat<SprayPlan>("spray");
        var trips = f.Required("trips", new ListFormat<SprayTrip>(t), x => x.Trips, "");
        var yearly = f.Required("yearlyTotals", figures, x => x.YearlyTotals, "");
        var advice = f.Required("advice", new ListFormat<Advice>(Advice), x => x.Advice, "");
        return f.Made(v => new SprayPlan(v.Get(trips), v.Get(yearly), v.Get(advice)));
    }

    private RecordFormat<CoverPlan> CoverFormat(RecordFormat<Purchase> purchase)
    {
        var p = new RecordFormat<PatchCover>("patchCover");
        var patch = p.Required("patchId", Scalars.Id, x => x.PatchId, "");
        var area = p.Required("area", Figure, x => x.Area, "");
        var amount = p.Required("amount", Figure, x => x.Amount, "");
        p.Made(v => new PatchCover(v.Get(patch), v.Get(area), v.Get(amount)));

        var f = new RecordFormat<CoverPlan>("cover");
        var kind = f.Required("kind", NamesOf<CoverKind>.Format, x => x.Kind, "");
        var sentence = f.Required("sentence", Scalars.Words, x => x.Sentence, "");
        var patches = f.Required("patches", new ListFormat<PatchCover>(p), x => x.Patches, "");
        var total = f.Required("total", Figure, x => x.Total, "");
        var buy = f.Optional("purchase", purchase, x => x.Purchase, "");
        return f.Made(v => new CoverPlan(v.Get(kind), v.Get(sentence), v.Get(patches), v.Get(total), v.Get(buy)));
    }

    private RecordFormat<MaterialLine> MaterialFormat()
    {
        var f = new RecordFormat<MaterialLine>("material");
        var id = f.Required("id", Scalars.Words, x => x.Id, "");
        var name = f.Required("name", Scalars.Words, x => x.Name, "");
        var purpose = f.Required("purpose", Scalars.AnyText, x => x.Purpose, "");
        var need = f.Required("need", Figure, x => x.Need, "");
        var buy = f.Required("buy", Scalars.AnyText, x => x.Buy, "Empty where no bag sizes are known.");
        var cost = f.Optional("cost", Figure, x => x.Cost, "");
        return f.Made(v => new MaterialLine(v.Get(id), v.Get(name), v.Get(purpose), v.Get(need), v.Get(buy), v.Get(cost)));
    }
}
