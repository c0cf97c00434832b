// The published tables: comma-separated values with a header of comment lines.
#pragma once

#include <fstream>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace test {

inline std::string reference(const std::string& name) { return std::string(WORTMATH_REFERENCE) + "/" + name; }

struct table {
    std::vector<std::string> comments, columns;
    std::vector<std::vector<std::string>> rows;
    std::size_t column(const std::string& name) const {
        for (std::size_t i = 0; i < columns.size(); ++i)
            if (columns[i] == name) return i;
        throw std::runtime_error("no column " + name);
    }
    const std::string& at(std::size_t row, const std::string& name) const { return rows[row].at(column(name)); }
};

inline std::vector<std::string> cells(const std::string& line) {
    std::vector<std::string> out(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        char const c = line[i];
        if (c == '"') {
            if (quoted && i + 1 < line.size() && line[i + 1] == '"') out.back() += '"', ++i;
            else quoted = !quoted;
        } else if (c == ',' && !quoted) {
            out.emplace_back();
        } else {
            out.back() += c;
        }
    }
    return out;
}

inline table read_table(const std::string& name) {
    std::ifstream file(reference(name));
    if (!file) throw std::runtime_error("cannot read " + name);
    table t;
    for (std::string line; std::getline(file, line);) {
        if (!line.empty() && line.back() == '\r') line.pop_back();
        if (line.empty()) continue;
        if (line[0] == '#') t.comments.push_back(line);
        else if (t.columns.empty()) t.columns = cells(line);
        else t.rows.push_back(cells(line));
    }
    return t;
}

}  // namespace test
