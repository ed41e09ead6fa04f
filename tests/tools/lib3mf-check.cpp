// Reads a 3MF file with the 3MF Consortium's library (Debian: lib3mf-dev) and tells what it found, one line a fact:
//   warnings N
//   unit N                                  (the library numbers microns 0, millimetres 1)
//   item VERTICES TRIANGLES SOUND VOLUME MINZ NAME    for each build item, moved by its transform; mm and mm3
#include <algorithm>
#include <cstdio>
#include <string>
#include <vector>

#include <Model/COM/NMR_DLLInterfaces.h>

using namespace NMR;

static int failed(const char* step)
{
    std::fprintf(stderr, "lib3mf: %s failed\n", step);
    return 1;
}

int main(int argc, char** argv)
{
    if (argc != 2)
        return failed("usage: lib3mf-check FILE;");
    PLib3MFModel* model;
    PLib3MFModelReader* reader;
    if (lib3mf_createmodel(&model) || lib3mf_model_queryreader(model, "3mf", &reader))
        return failed("start");
    if (lib3mf_reader_readfromfileutf8(reader, argv[1]))
    {
        DWORD code;
        LPCSTR message;
        lib3mf_getlasterror(reader, &code, &message);
        return failed(message);
    }

    DWORD warnings, unit;
    lib3mf_reader_getwarningcount(reader, &warnings);
    lib3mf_model_getunit(model, &unit);
    std::printf("warnings %u\nunit %u\n", warnings, unit);

    PLib3MFModelBuildItemIterator* items;
    if (lib3mf_model_getbuilditems(model, &items))
        return failed("build");
    BOOL more;
    while (!lib3mf_builditemiterator_movenext(items, &more) && more)
    {
        PLib3MFModelBuildItem* item;
        PLib3MFModelObjectResource* object;
        MODELTRANSFORM move;
        BOOL mesh, sound;
        DWORD vertexCount, triangleCount;
        if (lib3mf_builditemiterator_getcurrent(items, &item) || lib3mf_builditem_getobjectresource(item, &object)
            || lib3mf_builditem_getobjecttransform(item, &move) || lib3mf_object_ismeshobject(object, &mesh) || !mesh
            || lib3mf_meshobject_ismanifoldandoriented(object, &sound) || lib3mf_meshobject_getvertexcount(object, &vertexCount)
            || lib3mf_meshobject_gettrianglecount(object, &triangleCount))
            return failed("build item");
        char name[256];
        ULONG length;
        if (lib3mf_object_getnameutf8(object, name, sizeof name, &length))
            return failed("name");

        struct Point { double x, y, z; };
        std::vector<Point> points;
        double lowest = 1e30;
        for (DWORD i = 0; i < vertexCount; i++)
        {
            MODELMESHVERTEX v;
            if (lib3mf_meshobject_getvertex(object, i, &v))
                return failed("vertex");
            double p[3];
            for (int row = 0; row < 3; row++)
            {
                p[row] = move.m_fFields[row][3];
                for (int k = 0; k < 3; k++)
                    p[row] += double(v.m_fPosition[k]) * move.m_fFields[row][k];
            }
            points.push_back({p[0], p[1], p[2]});
            lowest = std::min(lowest, p[2]);
        }
        double volume = 0;
        for (DWORD i = 0; i < triangleCount; i++)
        {
            MODELMESHTRIANGLE t;
            if (lib3mf_meshobject_gettriangle(object, i, &t))
                return failed("triangle");
            const Point &a = points[t.m_nIndices[0]], &b = points[t.m_nIndices[1]], &c = points[t.m_nIndices[2]];
            volume += (a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x)) / 6;
        }
        std::printf("item %u %u %d %.9g %.9g %s\n", vertexCount, triangleCount, sound ? 1 : 0, volume, lowest, name);
    }
    return 0;
}
