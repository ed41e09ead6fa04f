using CsCheck;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Whatever is done to a store in whatever order, it holds and refuses the same as a plain model of it, also when it is opened again.</summary>
public sealed class ModelTests
{
    private enum Step
    {
        AddDesign,
        Revise,
        Rename,
        DeleteDesign,
        RestoreDesign,
        AddBuild,
        ChangeBuild,
        DeleteBuild,
        RestoreBuild,
        AddOuting,
        ChangeOuting,
        DeleteOuting,
        RestoreOuting,
        FailTogether,
        OpenAgain,
    }

    private static readonly string[] Names = ["Mudflat", "MUDFLAT", "Möwe 21", "a'; DROP TABLE design --", "🌊@3 cm", "länger"];

    private static readonly Gen<(Step Step, int Which, int Value)[]> Histories =
        Gen.Select(Gen.Enum<Step>(), Gen.Int[0, 7], Gen.Int[0, 5]).Array[10, 60];

    [Fact]
    public void A_store_holds_what_a_plain_model_holds() => Histories.Hold(
        steps =>
        {
            using TemporaryStore place = new();
            Model model = new();
            WorkshopStore store = place.Open();
            try
            {
                foreach ((Step step, int which, int value) in steps)
                {
                    if (step == Step.OpenAgain)
                    {
                        store.Dispose();
                        store = place.Open();
                        continue;
                    }

                    bool expected = model.Do(step, which, value), done = Do(store, step, which, value);
                    Assert.True(expected == done, $"{step} {which} {value}: {(done ? "done" : "refused")}");
                }

                Assert.Equal(model.Show(), Show(store));
                store.Dispose();
                store = place.Open();
                Assert.Equal(model.Show(), Show(store));
                Assert.Empty(StoreCheck.Of(store, TestContext.Current.CancellationToken).Findings);
            }
            finally
            {
                store.Dispose();
            }
        },
        iter: 60,
        print: steps => string.Join(", ", steps));

    private static bool Do(WorkshopStore store, Step step, int which, int value)
    {
        try
        {
            switch (step)
            {
                case Step.AddDesign:
                    store.Shelf.Add(Names[value], SampleFins.BareEntry("x", 1 + which), [Names[value]]);
                    break;
                case Step.Revise:
                    store.Shelf.Revise(which + 1, SampleFins.BareEntry("x", 1 + value));
                    break;
                case Step.Rename:
                    store.Shelf.Rename(which + 1, Names[value]);
                    break;
                case Step.DeleteDesign:
                    store.Shelf.Delete(which + 1);
                    break;
                case Step.RestoreDesign:
                    store.Restore(BinKind.Design, which + 1);
                    break;
                case Step.AddBuild:
                    store.Builds.Add(new() { RevisionId = which + 1, Name = Names[value], PlasticGrams = value / 3.0 });
                    break;
                case Step.ChangeBuild:
                    store.Builds.Change(store.Builds.Get(which + 1) with { Problems = Names[value], PlasticGrams = null });
                    break;
                case Step.DeleteBuild:
                    store.Builds.Delete(which + 1);
                    break;
                case Step.RestoreBuild:
                    store.Restore(BinKind.Build, which + 1);
                    break;
                case Step.AddOuting:
                    store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = Names[value], BuildId = which == 0 ? null : which }, null);
                    break;
                case Step.ChangeOuting:
                    store.Outings.Change(store.Outings.Get(which + 1) with { Grip = value });
                    break;
                case Step.DeleteOuting:
                    store.Outings.Delete(which + 1);
                    break;
                case Step.RestoreOuting:
                    store.Restore(BinKind.Outing, which + 1);
                    break;
                case Step.FailTogether:
                    store.Together(() =>
                    {
                        store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = "never" }, null);
                        store.Outings.Delete(999);
                    });
                    break;
            }

            return true;
        }
        catch (StoreException refusal) when (refusal.Problem == StoreProblem.Wrong)
        {
            Assert.Null(store.Refusal);
            return false;
        }
    }

    private static string[] Show(WorkshopStore store) =>
    [
        .. store.Shelf.List().OrderBy(design => design.Id).Select(design => $"{design.Id} {design.Name} {string.Join(',', design.Tags)}: "
            + string.Join(' ', store.Shelf.Revisions(design.Id).Select(revision => $"{revision.Id}={store.Shelf.Read(revision.Id).Design?.Prove.MassKg ?? double.NaN}"))),
        .. store.Builds.List().OrderBy(build => build.Id).Select(build => $"{build.Id} {build.Name} of {build.RevisionId} {build.PlasticGrams} {build.Problems}"),
        .. store.Outings.List().OrderBy(outing => outing.Id).Select(outing => $"{outing.Id} {outing.Place} {outing.BuildId} {outing.Grip}"),
        .. store.Bin.List().Select(item => $"{item.Kind} {item.Id}").Order(StringComparer.Ordinal),
    ];

    /// <summary>The store as lists: numbers count from 1, as a new table's do.</summary>
    private sealed class Model
    {
        private readonly List<(string Name, string Tag, List<(long Id, int Mass)> Revisions, bool IsDeleted)> _designs = [];
        private readonly List<(int Design, long Revision, string Name, double? Plastic, string Problems, bool IsDeleted)> _builds = [];
        private readonly List<(string Place, int? Build, int? Grip, bool IsDeleted)> _outings = [];
        private long _revisions;

        public bool Do(Step step, int which, int value)
        {
            switch (step)
            {
                case Step.AddDesign when !IsTaken(Names[value], -1):
                    _designs.Add((Names[value], Names[value], [(++_revisions, 1 + which)], false));
                    return true;
                case Step.Revise when IsThere(which) && _designs[which].Revisions[^1].Mass != 1 + value:
                    _designs[which].Revisions.Add((++_revisions, 1 + value));
                    return true;
                case Step.Rename when IsThere(which) && !IsTaken(Names[value], which):
                    _designs[which] = _designs[which] with { Name = Names[value] };
                    return true;
                case Step.DeleteDesign when IsThere(which) && !_builds.Exists(build => build.Design == which && !build.IsDeleted):
                    _designs[which] = _designs[which] with { IsDeleted = true };
                    return true;
                case Step.RestoreDesign when which < _designs.Count && _designs[which].IsDeleted && !IsTaken(_designs[which].Name, which):
                    _designs[which] = _designs[which] with { IsDeleted = false };
                    return true;
                case Step.AddBuild when DesignOf(which + 1) is int design && !IsBuilt(Names[value], -1):
                    _builds.Add((design, which + 1, Names[value], value / 3.0, "", false));
                    return true;
                case Step.ChangeBuild when which < _builds.Count && DesignOf(_builds[which].Revision) is not null && !IsBuilt(_builds[which].Name, which):
                    _builds[which] = _builds[which] with { Problems = Names[value], Plastic = null };
                    return true;
                case Step.DeleteBuild when which < _builds.Count && !_builds[which].IsDeleted:
                    _builds[which] = _builds[which] with { IsDeleted = true };
                    return true;
                case Step.RestoreBuild when which < _builds.Count && _builds[which].IsDeleted && DesignOf(_builds[which].Revision) is not null && !IsBuilt(_builds[which].Name, which):
                    _builds[which] = _builds[which] with { IsDeleted = false };
                    return true;
                case Step.AddOuting when which <= _builds.Count:
                    _outings.Add((Names[value], which == 0 ? null : which, null, false));
                    return true;
                case Step.ChangeOuting when which < _outings.Count && value > 0:
                    _outings[which] = _outings[which] with { Grip = value };
                    return true;
                case Step.DeleteOuting when which < _outings.Count && !_outings[which].IsDeleted:
                    _outings[which] = _outings[which] with { IsDeleted = true };
                    return true;
                case Step.RestoreOuting when which < _outings.Count && _outings[which].IsDeleted:
                    _outings[which] = _outings[which] with { IsDeleted = false };
                    return true;
                default:
                    return false;
            }
        }

        public string[] Show() =>
        [
            .. _designs.Index().Where(design => !design.Item.IsDeleted).Select(design => $"{design.Index + 1} {design.Item.Name} {design.Item.Tag}: "
                + string.Join(' ', design.Item.Revisions.Select(revision => $"{revision.Id}={(double)revision.Mass}"))),
            .. _builds.Index().Where(build => !build.Item.IsDeleted).Select(build => $"{build.Index + 1} {build.Item.Name} of {build.Item.Revision} {build.Item.Plastic} {build.Item.Problems}"),
            .. _outings.Index().Where(outing => !outing.Item.IsDeleted).Select(outing => $"{outing.Index + 1} {outing.Item.Place} {outing.Item.Build} {outing.Item.Grip}"),
            .. _designs.Index().Where(design => design.Item.IsDeleted).Select(design => $"Design {design.Index + 1}")
                .Concat(_builds.Index().Where(build => build.Item.IsDeleted).Select(build => $"Build {build.Index + 1}"))
                .Concat(_outings.Index().Where(outing => outing.Item.IsDeleted).Select(outing => $"Outing {outing.Index + 1}"))
                .Order(StringComparer.Ordinal),
        ];

        private bool IsThere(int design) => design < _designs.Count && !_designs[design].IsDeleted;

        private int? DesignOf(long revision) => _designs.FindIndex(design => design.Revisions.Exists(one => one.Id == revision)) is var at and >= 0 && !_designs[at].IsDeleted ? at : null;

        private bool IsTaken(string name, int except) => _designs.Index().Any(design => design.Index != except && !design.Item.IsDeleted && Same(design.Item.Name, name));

        private bool IsBuilt(string name, int except) => _builds.Index().Any(build => build.Index != except && !build.Item.IsDeleted && Same(build.Item.Name, name));

        private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
    }
}
