#include "floors.h"

#include <algorithm>
#include <map>
#include <regex>
#include <set>

namespace foldyard::house {
namespace {

const std::map<std::string, int> kFloors = {
    {"measure", 0}, {"solver", 0}, {"cloth", 1}, {"goods", 1},   {"fold", 1}, {"lay", 1},
    {"costing", 1}, {"cutting", 2}, {"batch", 3}, {"inspect", 4}, {"job", 5}};

// Values only: what the inspector may see besides `measure`.
const std::set<std::string> kNouns = {
    "cloth/roll.h",     "goods/panel.h",      "fold/fold_plan.h", "lay/cutter.h",
    "costing/pace.h",   "cutting/cut_tree.h", "job/job.h",        "job/plan.h",         "job/batch_plan.h",
    "job/hand.h",
    "inspect/inspect_plan.h"};

bool is_noun(const std::string& include) {
  return starts_with(include, "measure/") || starts_with(include, "inspect/") ||
         kNouns.count(include) > 0;
}

bool may_include(const std::string& room, const std::string& include) {
  const auto target = step(include, 0);
  if (floor_of(target) < 0 || target == room) return true;
  return room == "inspect" ? is_noun(include) : floor_of(target) < floor_of(room);
}

std::string fault(const Source& source, const std::string& include, const std::string& why) {
  return source.path + " includes " + include + ": " + why;
}

// The rooms of the app that show widgets.
const std::set<std::string> kWithWidgets = {"batch", "fields", "printing", "shelf", "table", "window"};

const std::regex kQt(R"(Q\w+(/.*)?|q[a-z]\w*\.h)");
const std::regex kWidgets(
    R"(QtWidgets(/.*)?|Q(Application|MainWindow|\w*Dialog|\w*Widget|\w*WidgetItem|\w*View|(?!Page)\w*Layout|)"
    R"(\w*Button|\w*Box|\w*Edit|Label|Menu|MenuBar|\w*Bar|Style|StyleFactory|\w*Style|\w*Slider|)"
    R"(Splitter|Frame|\w*Delegate|Graphics\w+|Completer|UndoView|WhatsThis|ToolTip))");

}  // namespace

int floor_of(const std::string& room) {
  const auto found = kFloors.find(room);
  return found == kFloors.end() ? -1 : found->second;
}

std::vector<std::string> includes_of(const std::string& text) {
  static const std::regex kInclude(R"re(^\s*#\s*include\s*["<]([^">]+)[">])re");
  std::vector<std::string> includes;
  std::smatch match;
  for (const auto& line : lines_of(text))
    if (std::regex_search(line, match, kInclude)) includes.push_back(match[1]);
  return includes;
}

std::vector<std::string> upward_includes(const Source& source) {
  std::vector<std::string> faults;
  const auto room = step(source.path, 1);
  for (const auto& include : includes_of(source.text)) {
    if (!may_include(room, include)) faults.push_back(fault(source, include, "not on a lower floor"));
    if (step(include, 0) == "app") faults.push_back(fault(source, include, "core knows no app"));
  }
  return faults;
}

std::vector<std::string> qt_in_core(const Source& source) {
  std::vector<std::string> faults;
  for (const auto& include : includes_of(source.text))
    if (std::regex_match(include, kQt)) faults.push_back(fault(source, include, "core has no Qt"));
  return faults;
}

std::vector<std::string> widgets_below_window(const Source& source) {
  std::vector<std::string> faults;
  for (const auto& include : includes_of(source.text))
    if (std::regex_match(include, kWidgets))
      faults.push_back(fault(source, include, "this room has no Widgets"));
  return faults;
}

std::vector<RoomLinks> room_links(const std::string& cmake_text) {
  static const std::regex kRoom(R"(foldyard_(?:app_)?room\((\w+)(?:\s+LINKS\s+([^)]*))?\))");
  static const std::regex kName(R"([\w:]+)");
  std::vector<RoomLinks> rooms;
  for (std::sregex_iterator it(cmake_text.begin(), cmake_text.end(), kRoom), end; it != end; ++it) {
    if ((*it)[1] == "name") continue;
    const std::string links = (*it)[2];
    std::sregex_token_iterator names(links.begin(), links.end(), kName), none;
    rooms.push_back({(*it)[1], {names, none}});
  }
  return rooms;
}

std::vector<std::string> upward_links(const std::vector<RoomLinks>& rooms) {
  std::vector<std::string> faults;
  for (const auto& room : rooms) {
    if (floor_of(room.room) < 0) faults.push_back(room.room + " has no floor in tests/house/floors.cpp");
    for (const auto& link : room.links)
      if (floor_of(link) < 0 || floor_of(link) >= floor_of(room.room))
        faults.push_back(room.room + " links " + link + ", which is not on a lower floor");
  }
  return faults;
}

std::vector<std::string> unlinked_includes(const Source& source, const std::vector<RoomLinks>& rooms) {
  const auto room = step(source.path, 1);
  const auto found = std::find_if(rooms.begin(), rooms.end(), [&](const auto& r) { return r.room == room; });
  if (found == rooms.end()) return {source.path + ": its room is not in core/CMakeLists.txt"};
  std::vector<std::string> faults;
  for (const auto& include : includes_of(source.text)) {
    const auto target = step(include, 0);
    const bool needs_link = floor_of(target) >= 0 && target != room && target != "job";
    const auto& links = found->links;
    if (needs_link && std::find(links.begin(), links.end(), target) == links.end())
      faults.push_back(fault(source, include, "its room does not link that one"));
  }
  return faults;
}

std::vector<std::string> widget_links(const std::vector<RoomLinks>& app_rooms) {
  std::vector<std::string> faults;
  for (const auto& room : app_rooms)
    for (const auto& link : room.links)
      if (kWithWidgets.count(room.room) == 0 && link == "Qt6::Widgets")
        faults.push_back("app/" + room.room + " links Widgets");
  return faults;
}

}  // namespace foldyard::house
