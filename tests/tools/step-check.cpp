// Reads a STEP file with Open CASCADE Technology 7.6 (Debian: libocct-data-exchange-dev, libocct-modeling-algorithms-dev) and tells what it
// found, one line a fact:
//   problems N          messages of the reader's check list, after loading and after transfer; each is printed on stderr
//   solids N, shells N, faces N, edges N
//   valid 0|1, closed 0|1
//   volume MM3, area MM2
//   bounds X0 Y0 Z0 X1 Y1 Z1
// The reader repairs wrong face senses silently but for its check list, so that list must be empty.
#include <cstdio>
#include <iostream>

#include <BRepBndLib.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <BRep_Tool.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <Interface_Check.hxx>
#include <Interface_CheckIterator.hxx>
#include <STEPControl_Reader.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <XSControl_TransferReader.hxx>
#include <XSControl_WorkSession.hxx>

static int problems(Interface_CheckIterator list)
{
    int count = 0;
    for (list.Start(); list.More(); list.Next())
    {
        const Handle(Interface_Check)& check = list.Value();
        for (int i = 1; i <= check->NbFails(); i++, count++)
            std::cerr << "fail: " << check->CFail(i) << " at #" << list.Number() << "\n";
        for (int i = 1; i <= check->NbWarnings(); i++, count++)
            std::cerr << "warning: " << check->CWarning(i) << " at #" << list.Number() << "\n";
    }
    return count;
}

static int count(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind)
{
    TopTools_IndexedMapOfShape found;
    TopExp::MapShapes(shape, kind, found);
    return found.Extent();
}

int main(int argc, char** argv)
{
    STEPControl_Reader reader;
    if (argc != 2 || reader.ReadFile(argv[1]) != IFSelect_RetDone)
    {
        std::cerr << "cannot read the file\n";
        return 1;
    }
    int found = problems(reader.WS()->ModelCheckList(Standard_False));
    reader.TransferRoots();
    found += problems(reader.WS()->TransferReader()->LastCheckList());

    TopoDS_Shape shape = reader.OneShape();
    bool closed = count(shape, TopAbs_SHELL) > 0;
    for (TopExp_Explorer shell(shape, TopAbs_SHELL); shell.More(); shell.Next())
        closed = closed && BRep_Tool::IsClosed(shell.Current());
    GProp_GProps volume, area;
    BRepGProp::VolumeProperties(shape, volume, 1e-7, Standard_True);
    BRepGProp::SurfaceProperties(shape, area, 1e-6);
    Bnd_Box box;
    BRepBndLib::AddOptimal(shape, box, Standard_False, Standard_False);
    double x0, y0, z0, x1, y1, z1;
    box.Get(x0, y0, z0, x1, y1, z1);
    std::printf("problems %d\nsolids %d\nshells %d\nfaces %d\nedges %d\nvalid %d\nclosed %d\nvolume %.9g\narea %.9g\nbounds %.6f %.6f %.6f %.6f %.6f %.6f\n",
        found, count(shape, TopAbs_SOLID), count(shape, TopAbs_SHELL), count(shape, TopAbs_FACE), count(shape, TopAbs_EDGE),
        BRepCheck_Analyzer(shape).IsValid() ? 1 : 0, closed ? 1 : 0, volume.Mass(), area.Mass(), x0, y0, z0, x1, y1, z1);
    return 0;
}
