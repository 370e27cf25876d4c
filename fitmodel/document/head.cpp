// SPDX-License-Identifier: MIT
#include "document/head.h"

#include <cmath>

namespace tripoise::document {

Head readHead(Fields& root, std::string_view format, int newestVersion)
{
    const Json* found = root.find("format");
    if (!found) {
        Problem problem = problemAt(ProblemCode::NotOneOf, root.pathOf("format"));
        problem.names.emplace_back(format);
        root.report().add(std::move(problem));
    } else if (!found->is_string()) {
        root.report().add(wrongType(*found, root.pathOf("format"), "text"));
    } else if (found->get_ref<const std::string&>() != format) {
        Problem problem = problemAt(ProblemCode::WrongFormat, root.pathOf("format"), shown(*found));
        problem.names.emplace_back(format);
        root.report().add(std::move(problem));
        return Head::Other;
    }
    const Json* version = root.find("version");
    const double newest = newestVersion;
    if (!version) {
        root.report().add(missingAt(root.pathOf("version"), {1.0, newest, {}}));
        return Head::Readable;
    }
    const double number = version->is_number() ? version->get<double>() : 0.5;
    const std::string path = root.pathOf("version");
    Problem problem;
    if (number != std::floor(number))
        problem = wrongType(*version, path, "integer");
    else if (number > newest)
        problem = problemAt(ProblemCode::NewerVersion, path, shown(*version));
    else if (number < 1.0)
        problem = problemAt(ProblemCode::OutOfRange, path, shown(*version));
    else {
        root.report().version(static_cast<int>(number));
        return Head::Readable;
    }
    problem.low = 1.0;
    problem.high = newest;
    const bool newer = problem.code == ProblemCode::NewerVersion;
    root.report().add(std::move(problem));
    return newer ? Head::Newer : Head::Readable;
}

} // namespace tripoise::document
